import type { ReactElement } from 'react';
import css from './Figure.module.css';
import { cx } from '../look/cx.ts';
import type { Figure as FigureValue } from '../../model/showNumber.ts';

interface FigureProps {
  readonly of: FigureValue;
  readonly size?: 'row' | 'lead' | 'title' | 'large' | 'figureL' | 'figureXl';
  readonly className?: string;
}

/** Units as they are printed: `m2` in code is written m² for people. */
export function unitSign(unit: string): string {
  return unit.replace(/(?<=[a-z])2\b/, '²').replace(/(?<=[a-z])3\b/, '³');
}

/** A figure in weight 800 with its unit at 55 %, never under 14 px. */
export function Figure({ of, size = 'row', className }: FigureProps): ReactElement {
  return (
    <span className={cx(css.figure, css[size], className)}>
      {of.figure}
      {/* The space belongs to the unit, so that it is as small, and is there for whoever reads aloud. */}
      {of.unit && <span className={css.unit}> {unitSign(of.unit)}</span>}
    </span>
  );
}
