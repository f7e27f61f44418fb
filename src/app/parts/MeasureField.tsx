import { useEffect, useId, useRef, useState, type KeyboardEvent, type ReactElement, type Ref } from 'react';
import css from './Field.module.css';
import { cx } from '../look/cx.ts';
import { useUnits } from '../plan.ts';
import { parseLength } from '../../model/parseLength.ts';
import { figureText } from '../../model/showNumber.ts';
import { lengthForField, showFineSize, showLength, showSize } from '../../model/showLength.ts';
import { fieldUnit, smallFieldUnit, type LengthUnit, type Units } from '../../model/units.ts';
import { lengthFault, ui } from '../../words/uiWords.ts';

/** Room-sized lengths in m or feet; sizes (thickness, clearance) and fine sizes (crack width) in mm or inches. */
export type MeasureKind = 'length' | 'size' | 'fine';

export interface MeasureFieldProps {
  readonly label: string;
  readonly mm: number | null;
  /** Called on Enter and when the field is left; null only when `optional`. */
  readonly onSet: (mm: number | null) => void;
  /** Enter, after `onSet` if the text had changed. */
  readonly onEnter?: (mm: number | null) => void;
  /** At each key that makes a readable length: for a live line. */
  readonly onType?: (mm: number) => void;
  readonly kind?: MeasureKind;
  readonly optional?: boolean;
  readonly minMm?: number;
  readonly maxMm?: number;
  readonly inline?: boolean;
  /** A length that was measured, not typed: shown to the centimetre or the eighth, not to the grid. */
  readonly rounded?: boolean;
  readonly say?: string | null;
  readonly inputRef?: Ref<HTMLInputElement>;
  readonly placeholder?: string;
}

const UNITS: Readonly<Record<MeasureKind, readonly LengthUnit[]>> = {
  length: ['m', 'ft', 'mm'],
  size: ['mm', 'in', 'm'],
  fine: ['mm', 'in'],
};

function startUnit(kind: MeasureKind, units: Units): LengthUnit {
  return kind === 'length' ? fieldUnit(units) : smallFieldUnit(units);
}

function roundedForField(mm: number, unit: LengthUnit): string {
  if (unit === 'm') return showLength(mm, 'metric').figure;
  return unit === 'ft' ? showLength(mm, 'imperial').figure : lengthForField(Math.round(mm), unit);
}

/** The same length in the other system, under the field. */
function other(mm: number, kind: MeasureKind, shown: LengthUnit): string {
  const units = shown === 'ft' || shown === 'in' ? 'metric' : 'imperial';
  const show = { length: showLength, size: showSize, fine: showFineSize }[kind];
  return ui.also(figureText(show(mm, units)));
}

/** A length as people type it; what cannot be read is answered by a sentence and changes nothing. */
export function MeasureField(props: MeasureFieldProps): ReactElement {
  const {
    label,
    mm,
    onSet,
    onEnter,
    onType,
    kind = 'length',
    optional = false,
    minMm,
    maxMm,
    inline = false,
    inputRef,
  } = props;
  const id = useId();
  const units = useUnits();
  const [unit, setUnit] = useState<LengthUnit>(() => startUnit(kind, units));
  const shown = mm === null ? '' : props.rounded ? roundedForField(mm, unit) : lengthForField(mm, unit);
  const [text, setText] = useState(shown);
  const [fault, setFault] = useState<string | null>(null);
  const typing = useRef(false);

  useEffect(() => setUnit(startUnit(kind, units)), [kind, units]);
  useEffect(() => {
    // A live line must not write over what is being typed.
    if (typing.current) return;
    setText(shown);
    setFault(null);
  }, [shown]);

  function read(next: string): { readonly mm: number | null } | { readonly fault: string } {
    if (next.trim() === '') return optional || mm === null ? { mm: null } : { mm };
    const parsed = parseLength(next, unit);
    if (!parsed.ok) return { fault: lengthFault(parsed.fault, parsed.what, unit) };
    const say = (limit: number): string =>
      figureText(
        unit === 'm' || unit === 'ft'
          ? showLength(limit, unit === 'm' ? 'metric' : 'imperial')
          : showFineSize(limit, unit === 'in' ? 'imperial' : 'metric'),
      );
    if (minMm !== undefined && parsed.mm < minMm) return { fault: ui.measureTooSmall(say(minMm)) };
    if (maxMm !== undefined && parsed.mm > maxMm) return { fault: ui.measureTooLarge(say(maxMm)) };
    return { mm: parsed.mm };
  }

  function set(): number | null | 'fault' {
    typing.current = false;
    if (text === shown) {
      setFault(null);
      return mm;
    }
    const answer = read(text);
    if ('fault' in answer) {
      setFault(answer.fault);
      return 'fault';
    }
    setFault(null);
    setText(answer.mm === null ? '' : lengthForField(answer.mm, unit));
    if (answer.mm !== mm) onSet(answer.mm);
    return answer.mm;
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter') {
      const answer = set();
      if (answer !== 'fault') onEnter?.(answer);
    } else if (event.key === 'Escape') {
      typing.current = false;
      setText(shown);
      setFault(null);
    }
  }

  function nextUnit(): void {
    const list = UNITS[kind];
    const next = list[(list.indexOf(unit) + 1) % list.length] ?? unit;
    setUnit(next);
    if (mm !== null) setText(lengthForField(mm, next));
  }

  const words = fault ?? props.say ?? (mm === null || inline ? null : other(mm, kind, unit));
  return (
    <div className={cx(css.field, inline && css.inline, fault && css.fault)}>
      <label className={css.label} htmlFor={id}>
        {label}
      </label>
      <div className={css.box} data-unit={unit}>
        <input
          id={id}
          ref={inputRef}
          className={css.input}
          type="text"
          inputMode={unit === 'ft' || unit === 'in' ? 'text' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          placeholder={props.placeholder}
          value={text}
          onChange={(event) => {
            typing.current = true;
            setText(event.target.value);
            const answer = read(event.target.value);
            if ('mm' in answer && answer.mm !== null) onType?.(answer.mm);
          }}
          onFocus={(event) => event.target.select()}
          onBlur={set}
          onKeyDown={onKeyDown}
          aria-invalid={fault ? true : undefined}
          aria-describedby={words ? `${id}-say` : undefined}
        />
        <button
          type="button"
          className={css.unit}
          tabIndex={-1}
          onPointerDown={(event) => event.preventDefault()}
          onClick={nextUnit}
          aria-label={ui.unitOf(label, unit)}
        >
          {unit}
        </button>
      </div>
      {words && (
        <div id={`${id}-say`} className={css.say} role={fault ? 'alert' : undefined}>
          {words}
        </div>
      )}
    </div>
  );
}
