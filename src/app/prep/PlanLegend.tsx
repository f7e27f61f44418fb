import type { ReactElement } from 'react';
import css from './PrepLeft.module.css';
import { usePickedZone } from './usePickedZone.ts';
import { zoneRecipe } from './zoneRecipe.ts';
import { useDoc } from '../plan.ts';
import { prepText } from '../../words/stageWords.ts';

const teeth = (y: number): string => `M1 ${String(y)}l4-2.6 4 2.6 4-2.6 4 2.6 4-2.6 4 2.6 4-2.6 4 2.6 4-2.6 2 1.3`;

/** Bars of a machine that follows, as many as on the plan. */
function barsOf(place: number): string {
  const count = Math.min(place, 3);
  const at = (x: number, y: number): string =>
    Array.from({ length: count }, (_, i) => `M${String(x + (i - (count - 1) / 2) * 4)} ${String(y)}v8`).join('');
  return at(10, 4) + at(30, 4) + at(20, 16);
}

/** What Prep draws over the plan, in words; where machines follow each other, the reach of each by its name. */
export function PlanLegend(): ReactElement {
  const zone = usePickedZone();
  const prep = useDoc((doc) => (zone ? zoneRecipe(doc, zone)?.prep : null)) ?? null;
  const followers = prep?.followers ?? [];
  return (
    <section className={css.legend}>
      <h3>{prepText.onThePlan}</h3>
      <ul>
        <li>
          <svg width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">
            <path className={css.reach} d="M1 1h38v26H1z" strokeWidth="2" />
            <path d={teeth(9) + teeth(16) + teeth(23)} strokeWidth="1" />
          </svg>
          {prep?.machine && followers.length > 0 ? prepText.legendReachOf(prep.machine.name) : prepText.legendReach}
        </li>
        {followers.map((machine, index) => (
          <li key={machine.id}>
            <svg width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">
              <path className={css.follower} d="M1 1h38v26H1z" strokeWidth="2" />
              <path d={barsOf(index + 1)} strokeWidth="1.8" />
            </svg>
            {prepText.legendReachOf(machine.name)}
          </li>
        ))}
        <li>
          <svg width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">
            <path className={css.solid} d="M0 0h40v28H0z" stroke="none" />
          </svg>
          {prepText.legendHand}
        </li>
        <li>
          <svg width="40" height="28" viewBox="0 0 40 28" aria-hidden="true">
            <path d="M4 14h32M4 8v12M36 8v12" strokeWidth="1.5" />
          </svg>
          {prepText.legendNarrow}
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
