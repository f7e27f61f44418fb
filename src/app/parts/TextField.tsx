import { useEffect, useId, useState, type KeyboardEvent, type ReactElement } from 'react';
import css from './Field.module.css';
import { cx } from '../look/cx.ts';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  /** Called when the field is left or Enter is pressed, with what was typed, trimmed. */
  readonly onSet: (value: string) => void;
  /** Called at each key, where a form decides while typing. */
  readonly onType?: (value: string) => void;
  readonly lines?: boolean;
  readonly inline?: boolean;
  readonly say?: string | null;
  readonly fault?: string | null;
  readonly type?: 'text' | 'date';
  readonly autoFocus?: boolean;
}

export function TextField({
  label,
  value,
  onSet,
  onType,
  lines = false,
  inline = false,
  say,
  fault,
  type = 'text',
  autoFocus = false,
}: TextFieldProps): ReactElement {
  const id = useId();
  const [text, setText] = useState(value);
  useEffect(() => setText(value), [value]);
  const set = (): void => {
    if (text.trim() !== value) onSet(text.trim());
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter' && !lines) set();
    if (event.key === 'Escape') setText(value);
  };
  const shared = {
    id,
    className: cx(css.input, css.text),
    value: text,
    onChange: (event: { target: { value: string } }) => {
      setText(event.target.value);
      onType?.(event.target.value);
    },
    onBlur: set,
    onKeyDown,
    'aria-invalid': fault ? true : undefined,
    'aria-describedby': (fault ?? say) ? `${id}-say` : undefined,
  };
  return (
    <div className={cx(css.field, inline && css.inline, inline && css.long, fault && css.fault)}>
      <label className={css.label} htmlFor={id}>
        {label}
      </label>
      <div className={css.box}>
        {/* A dialog that opens on one question puts the hand there. */}
        {/* oxlint-disable-next-line jsx-a11y/no-autofocus */}
        {lines ? (
          <textarea {...shared} autoFocus={autoFocus} />
        ) : (
          <input {...shared} type={type} autoFocus={autoFocus} />
        )}
      </div>
      {(fault ?? say) && (
        <div id={`${id}-say`} className={css.say} role={fault ? 'alert' : undefined}>
          {fault ?? say}
        </div>
      )}
    </div>
  );
}
