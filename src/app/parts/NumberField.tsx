import { useId, useState, type KeyboardEvent, type ReactElement } from 'react';
import css from './Field.module.css';
import { cx } from '../look/cx.ts';
import { parseNumber } from '../../model/parseNumber.ts';
import { numberFault, ui } from '../../words/uiWords.ts';

interface NumberFieldProps {
  readonly label: string;
  readonly value: number | null;
  /** null only when `optional`. */
  readonly onSet: (value: number | null) => void;
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
  /** Decimals shown and kept; default 2, trailing zeros left out. */
  readonly decimals?: number;
  /** Arrow keys step by this. */
  readonly step?: number;
  readonly optional?: boolean;
  /** Always all decimals, so that a live figure does not jump. */
  readonly fixed?: boolean;
  /** Enter, after `onSet` if the text had changed. */
  readonly onEnter?: (value: number | null) => void;
  readonly inline?: boolean;
  readonly say?: string | null;
}

export function NumberField(props: NumberFieldProps): ReactElement {
  const { label, value, onSet, unit, min, max, decimals = 2, step = 1, optional = false, inline = false, say } = props;
  const id = useId();
  const shown = value === null ? '' : props.fixed ? value.toFixed(decimals) : String(Number(value.toFixed(decimals)));
  // Null: what the owner holds. Whoever is told a value may keep the one it had: then that is what stands here.
  const [typed, setText] = useState<string | null>(null);
  const text = typed ?? shown;
  const [fault, setFault] = useState<string | null>(null);
  const [was, setWas] = useState(shown);
  // Another value of its owner is an answer to a fault, but never writes over what is being typed.
  if (shown !== was) {
    setWas(shown);
    if (fault) {
      setText(null);
      setFault(null);
    }
  }

  function judge(next: number): string | null {
    if (min !== undefined && next < min) return ui.numberTooSmall(min, unit);
    if (max !== undefined && next > max) return ui.numberTooLarge(max, unit);
    return null;
  }
  /** What the field holds now, or 'fault' when it could not be taken. */
  function set(next: string): number | null | 'fault' {
    if (next.trim() === shown) {
      setText(null);
      setFault(null);
      return value;
    }
    if (next.trim() === '') {
      setText(null);
      if (optional) onSet(null);
      return optional ? null : value;
    }
    const read = parseNumber(next, { negative: min === undefined || min < 0 });
    const wrong = read.ok ? judge(read.value) : numberFault(read.fault, read.what);
    setFault(wrong);
    if (!read.ok || wrong) return 'fault';
    const number = Number(read.value.toFixed(decimals));
    setText(null);
    onSet(number);
    return number;
  }
  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter') {
      const taken = set(text);
      if (taken !== 'fault') props.onEnter?.(taken);
    }
    if (event.key === 'Escape') {
      setText(null);
      setFault(null);
    }
    if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    const read = parseNumber(text, { negative: true });
    const next = (read.ok ? read.value : (value ?? 0)) + (event.key === 'ArrowUp' ? step : -step);
    if (!judge(next)) onSet(Number(next.toFixed(decimals)));
  }
  const words = fault ?? say;
  return (
    <div className={cx(css.field, inline && css.inline, fault && css.fault)}>
      <label className={css.label} htmlFor={id}>
        {label}
      </label>
      <div className={css.box}>
        <input
          id={id}
          className={css.input}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          onChange={(event) => {
            setFault(null);
            setText(event.target.value);
          }}
          onFocus={(event) => event.target.select()}
          onBlur={() => set(text)}
          onKeyDown={onKeyDown}
          aria-invalid={fault ? true : undefined}
          aria-describedby={words ? `${id}-say` : undefined}
        />
        {unit && <span className={css.unit}>{unit}</span>}
      </div>
      {words && (
        <div id={`${id}-say`} className={css.say} role={fault ? 'alert' : undefined}>
          {words}
        </div>
      )}
    </div>
  );
}
