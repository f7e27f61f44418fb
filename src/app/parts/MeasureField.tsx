import { useEffect, useId, useState, type KeyboardEvent, type ReactElement, type Ref } from 'react';
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

/** More signs than this do not fit in the large type. */
const LONG = 7;

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
  // Null: what the owner holds. Whoever is told a value may keep the one it had: then that is what stands here.
  const [typed, setText] = useState<string | null>(null);
  const text = typed ?? shown;
  const [fault, setFault] = useState<string | null>(null);

  useEffect(() => setUnit(startUnit(kind, units)), [kind, units]);
  const [was, setWas] = useState(shown);
  // Another value of its owner is an answer to a fault, but never writes over what is being typed.
  if (shown !== was) {
    setWas(shown);
    if (fault) {
      setText(null);
      setFault(null);
    }
  }

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
    if (text === shown) {
      setText(null);
      setFault(null);
      return mm;
    }
    const answer = read(text);
    if ('fault' in answer) {
      setFault(answer.fault);
      return 'fault';
    }
    setFault(null);
    setText(null);
    if (answer.mm !== mm) onSet(answer.mm);
    return answer.mm;
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter') {
      const answer = set();
      if (answer !== 'fault') onEnter?.(answer);
    } else if (event.key === 'Escape') {
      setText(null);
      setFault(null);
    }
  }

  function nextUnit(): void {
    const list = UNITS[kind];
    const next = list[(list.indexOf(unit) + 1) % list.length] ?? unit;
    setUnit(next);
    if (typed === null) return;
    // A figure that is being typed was meant in the unit that is now chosen.
    const parsed = parseLength(typed, next);
    if (parsed.ok) onType?.(parsed.mm);
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
          data-long={text.length > LONG ? '' : undefined}
          type="text"
          inputMode={unit === 'ft' || unit === 'in' ? 'text' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          placeholder={props.placeholder}
          value={text}
          onChange={(event) => {
            setFault(null);
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
