import type { ReactElement } from 'react';
import css from './WhyDock.module.css';
import { showQuantity } from './showQuantity.ts';
import { shownTerms, unitsOfSum } from './shownTerms.ts';
import { useNames } from './useNames.ts';
import { whyColumn, whySum, type WhyPart } from './whyColumn.ts';
import { cx } from '../look/cx.ts';
import { useJob, useTakeoff, useUnits } from '../plan.ts';
import { askWhy } from '../session.ts';
import { figureText } from '../../model/showNumber.ts';
import type { Line } from '../../takeoff/line.ts';
import { evaluate } from '../../takeoff/formula.ts';
import { whyText } from '../../words/whyWords.ts';

const signWords = {
  plus: '',
  less: `${whyText.less} `,
  times: '',
  over: `${whyText.over} `,
  most: `${whyText.most} `,
} as const;

/** The sum of a line, written as a column that adds up; terms that are lines of their own lead on to theirs. */
export function WhyColumn({ line }: { readonly line: Line }): ReactElement {
  const screen = useUnits();
  const units = unitsOfSum(line, screen);
  const currency = useJob()?.currency ?? 'USD';
  const names = useNames();
  const { takeoff } = useTakeoff();
  const { formula, terms } = line.working;
  const inUnits = shownTerms(terms, units);
  // A sum within the sum is that of the numbers as they stand above it.
  const parts = whyColumn(formula, terms, (piece) => evaluate(piece, piece.op === 'term' ? terms : inUnits));

  const text = (value: number, unit: string): string => figureText(showQuantity(value, unit, units, currency));
  const figure = (part: WhyPart): string => {
    const shown = part.term
      ? text(part.value.likely, part.term.unit)
      : showQuantity(part.value.likely, '', units, currency).figure;
    return part.sign === 'less' ? `− ${shown}` : shown;
  };
  const bare = (part: WhyPart): string =>
    showQuantity(part.value.likely, part.term?.unit ?? '', units, currency).figure;

  const row = (part: WhyPart, index: number): ReactElement => {
    const leads = part.term?.from ? takeoff?.lines.find((other) => other.key === part.term?.from) : undefined;
    const words = part.term
      ? `${index === 0 && part.sign !== 'less' ? '' : signWords[part.sign]}${names.term(part.term)}`
      : signWords[part.sign].trim();
    return (
      <div key={`${part.term?.name ?? 'part'}${String(index)}`}>
        {part.parts.length > 0 && <div className={css.group}>{part.parts.map(row)}</div>}
        <div className={cx(css.row, part.parts.length > 0 && css.sub)}>
          <span>
            {leads ? (
              <button type="button" className={css.link} onClick={() => askWhy(leads.key)} title={names.line(leads)}>
                {words}
              </button>
            ) : (
              words || (part.parts.length > 0 ? whySum(part.parts, bare) : whyText.one)
            )}
            {part.roundedUp && ` (${whyText.roundedUp})`}
          </span>
          <b>{figure(part)}</b>
        </div>
      </div>
    );
  };
  const single = parts.length === 1 && parts[0]?.parts.length === 0;
  return (
    <>
      {parts.map(row)}
      <div className={cx(css.row, css.total)}>
        <span>{single ? names.line({ ...line, zone: null }) : whySum(parts, bare)}</span>
        <b>{text(line.quantity.likely, line.unit)}</b>
      </div>
      {units !== screen && (
        <p className={css.note}>
          {whyText.inMetric(figureText(showQuantity(line.quantity.likely, line.unit, screen, currency)))}
        </p>
      )}
    </>
  );
}
