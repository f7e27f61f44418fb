import type { ReactElement } from 'react';
import css from './sheets/Sheet.module.css';
import { Choice } from '../parts/Choice.tsx';
import { Picker } from '../parts/Picker.tsx';

interface AnswersProps<T extends string> {
  readonly label: string;
  readonly words: Readonly<Record<T, string>>;
  readonly value: T | null;
  readonly onSet: (value: T) => void;
  /** In the entry bar: a list that opens, since side by side there is no room. */
  readonly inline?: boolean | undefined;
  readonly columns?: number;
}

/** One answer of a few: side by side in a sheet, a list in the entry bar. */
export function Answers<T extends string>({
  label,
  words,
  value,
  onSet,
  inline = false,
  columns,
}: AnswersProps<T>): ReactElement {
  const options = Object.entries<string>(words).map(([key, text]) => ({ value: key as T, words: text }));
  if (inline) return <Picker label={label} value={value} options={options} onPick={onSet} inline />;
  return (
    <Choice
      className={css.wide}
      label={label}
      value={value}
      options={options}
      onChoose={onSet}
      {...(columns ? { columns } : {})}
    />
  );
}
