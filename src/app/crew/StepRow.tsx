import type { ReactElement } from 'react';
import css from './Cards.module.css';
import { setTick, tickOf } from './ticks.ts';
import { cx } from '../look/cx.ts';
import { Icon } from '../parts/Icon.tsx';
import { useDoc, useUnits } from '../plan.ts';
import { stepText } from '../../exchange/zoneCardText.ts';
import type { ZoneStep } from '../../exchange/zoneSteps.ts';
import { crewText } from '../../words/siteWords.ts';

interface StepRowProps {
  readonly step: ZoneStep;
  readonly number: number;
  readonly csp: string | null;
}

/** One step of the work; the whole row ticks it off. */
export function StepRow({ step, number, csp }: StepRowProps): ReactElement {
  const units = useUnits();
  const tick = useDoc((doc) => tickOf(doc, step.of, step.what));
  const done = tick?.done ?? false;
  const words = stepText(step, units, csp);
  return (
    <button
      type="button"
      role="checkbox"
      aria-checked={done}
      className={css.step}
      onClick={() => setTick(step.of, step.what, !done)}
    >
      <span className={cx(css.box, done && css.done)}>{done ? <Icon name="done" /> : number}</span>
      <span className={css.words}>
        <b>{words.main}</b>
        <span>{words.more}</span>
        {done && tick?.on && <span>{crewText.doneBy([tick.on, tick.by].filter(Boolean).join(', '))}</span>}
      </span>
    </button>
  );
}
