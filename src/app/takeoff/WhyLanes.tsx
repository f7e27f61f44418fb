import type { ReactElement } from 'react';
import css from './WhyDock.module.css';
import { WhyColumn } from './WhyColumn.tsx';
import { WhySources } from './WhySources.tsx';
import { laneDifference } from '../lanes/laneDifference.ts';
import { useLaneOpinion } from '../lanes/useLanes.ts';
import { figureText, showHours } from '../../model/showNumber.ts';
import type { Line } from '../../takeoff/line.ts';
import { lanesText } from '../../words/laneWords.ts';

interface WhyLanesProps {
  /** A line of machine hours. */
  readonly line: Line;
  /** The rate that is being changed, or null. */
  readonly changing: string | null;
  readonly onChange: (name: string | null) => void;
}

/** Machine hours a second time, by driving, with their own sum, and the rates that only they have. */
export function WhyLanes({ line, changing, onChange }: WhyLanesProps): ReactElement | null {
  const lanes = useLaneOpinion(line);
  if (!lanes) return null;
  const [lanesH, rateH] = [lanes.quantity.likely, line.quantity.likely];
  const named = new Set(line.working.terms.map(({ name }) => name));
  const own = lanes.working.terms.filter(({ name }) => !named.has(name));
  return (
    <>
      <section className={css.section} aria-label={lanesText.second}>
        <h3>{lanesText.second}</h3>
        <p className={css.range}>
          {lanesText.says(figureText(showHours(lanesH)), figureText(showHours(rateH)), laneDifference(lanesH, rateH))}
        </p>
        <WhyColumn line={lanes} />
        <p className={css.note}>{lanesText.why}</p>
        <p className={css.note}>{lanesText.driving}</p>
      </section>
      <WhySources
        line={{ ...lanes, working: { ...lanes.working, terms: own } }}
        changing={changing}
        onChange={onChange}
      />
    </>
  );
}
