import type { ReactElement } from 'react';
import css from './PrepLeft.module.css';
import { prepText } from '../../words/stageWords.ts';

const teeth = (y: number): string => `M1 ${String(y)}l4-2.6 4 2.6 4-2.6 4 2.6 4-2.6 4 2.6 4-2.6 4 2.6 4-2.6 2 1.3`;

/** What Prep draws over the plan, in words. */
export function PlanLegend(): ReactElement {
  return (
    <section className={css.legend}>
      <h3>{prepText.onThePlan}</h3>
      <ul>
        <li>
          <svg width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">
            <path className={css.reach} d="M1 1h38v26H1z" strokeWidth="2" />
            <path d={teeth(9) + teeth(16) + teeth(23)} strokeWidth="1" />
          </svg>
          {prepText.legendReach}
        </li>
        <li>
          <svg width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">
            <path className={css.solid} d="M0 0h40v28H0z" stroke="none" />
          </svg>
          {prepText.legendHand}
        </li>
        <li>
          <svg width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">
            <path d="M0 10h40" strokeWidth="3" />
            <path d="M4 10v9M14 10v9M24 10v9M34 10v9" strokeWidth="2" />
          </svg>
          {prepText.legendStop}
        </li>
        <li>
          <svg width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">
            <path d="M0 14h40" strokeWidth="2" strokeDasharray="12 4 2 4" />
          </svg>
          {prepText.legendJoint}
        </li>
      </ul>
    </section>
  );
}
