import { Toggle } from '@base-ui/react/toggle';
import { ToggleGroup } from '@base-ui/react/toggle-group';
import { useId, type ReactElement } from 'react';
import css from './Choice.module.css';
import { cx } from '../look/cx.ts';

export interface ChoiceOption<T extends string> {
  readonly value: T;
  readonly words: string;
}

interface ChoiceProps<T extends string> {
  readonly label: string;
  /** The label is said to screen readers only: a heading beside it says it already. */
  readonly quiet?: boolean;
  readonly value: T | null;
  readonly options: readonly ChoiceOption<T>[];
  readonly onChoose: (value: T) => void;
  /** Answers per row; all in one row when left out. */
  readonly columns?: number;
  readonly className?: string | undefined;
}

/** A few answers side by side; the one that is set is ink. Pressing it again leaves it set. */
export function Choice<T extends string>({
  label,
  quiet = false,
  value,
  options,
  onChoose,
  columns,
  className,
}: ChoiceProps<T>): ReactElement {
  const labelId = useId();
  const choose = (next: readonly string[]): void => {
    const chosen = options.find((option) => option.value === next[0]);
    if (chosen) onChoose(chosen.value);
  };
  return (
    <div className={cx(css.choice, className)}>
      <div id={labelId} className={quiet ? 'forReaders' : css.label}>
        {label}
      </div>
      <ToggleGroup
        className={css.group}
        style={{ gridTemplateColumns: `repeat(${columns ?? options.length}, 1fr)` }}
        aria-labelledby={labelId}
        value={value === null ? [] : [value]}
        onValueChange={choose}
      >
        {options.map((option) => (
          <Toggle key={option.value} value={option.value} className={css.answer}>
            {option.words}
          </Toggle>
        ))}
      </ToggleGroup>
    </div>
  );
}
