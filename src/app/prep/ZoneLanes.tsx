import type { ReactElement } from 'react';
import css from './ZoneLanes.module.css';
import prepCss from './PrepRight.module.css';
import { zoneKey } from './zoneNames.ts';
import { laneDifference } from '../lanes/laneDifference.ts';
import { showLanes, useLanesOn } from '../lanes/lanesOn.ts';
import { useZoneLanes, type PassLanes } from '../lanes/useLanes.ts';
import { cx } from '../look/cx.ts';
import { Figure } from '../parts/Figure.tsx';
import { useDoc, useSettled, useUnits } from '../plan.ts';
import { askWhy, useSession } from '../session.ts';
import { cameraOf } from '../survey/cameraOf.ts';
import { lanesShow } from '../../canvas/paint/lanes.ts';
import type { LanePlan } from '../../geometry/lanes/lane.ts';
import type { Held } from '../../model/doc.ts';
import { figureText, showHours, showRun } from '../../model/showNumber.ts';
import { laneHours } from '../../takeoff/laneHours.ts';
import { lanesText } from '../../words/laneWords.ts';

/** The switch for lanes over the plan, and while it is on what they come to beside the rate. */
export function ZoneLanes({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const isOn = useLanesOn((now) => now.on);
  const { passes, stale } = useZoneLanes(isOn ? zoneKey(zone) : null);
  const plans = passes
    .filter(({ ask }, i) => passes.findIndex((other) => other.ask.field === ask.field) === i)
    .flatMap(({ ask, plan }) => (plan ? [{ ask, plan }] : []));
  const isFar = useSession(
    (now) =>
      plans.length > 0 &&
      !lanesShow(
        plans.map(({ plan }) => plan),
        cameraOf(now).pxPerMm,
      ),
  );
  return (
    <section className={cx(css.lanes, stale && css.stale)} aria-label={lanesText.title} aria-busy={stale}>
      <label className={css.switch}>
        {lanesText.title}
        <input type="checkbox" checked={isOn} onChange={(event) => showLanes(event.target.checked)} />
      </label>
      {isOn && passes.length === 0 && <p>{stale ? lanesText.waiting : lanesText.none}</p>}
      {isOn &&
        plans.map(({ ask, plan }) => (
          <Counts key={ask.hours} machine={plans.length > 1 ? ask.machineName : null} plan={plan} />
        ))}
      {isOn && plans.length > 0 && !isFar && <p>{lanesText.numbers}</p>}
      {isOn && isFar && <p>{lanesText.zoomIn}</p>}
      {isOn && <SecondOpinion passes={passes} />}
    </section>
  );
}

interface CountsProps {
  /** Named where several machines drive. */
  readonly machine: string | null;
  readonly plan: LanePlan;
}

function Counts({ machine, plan }: CountsProps): ReactElement {
  const units = useUnits();
  const { lanes, runs, turns, backingTurns, travelM } = plan;
  const counts = lanesText.counts(lanes, runs, turns, figureText(showRun(travelM, units)));
  return (
    <>
      <p>{machine ? lanesText.countsOf(machine, counts) : counts}</p>
      {backingTurns > 0 && <p>{lanesText.backs(backingTurns)}</p>}
    </>
  );
}

/** Hours of all passes by lanes beside those by rate; pressed, it asks why of the first pass. */
function SecondOpinion({ passes }: { readonly passes: readonly PassLanes[] }): ReactElement | null {
  const doc = useDoc((now) => now);
  const { takeoff } = useSettled();
  if (!takeoff) return null;
  const pairs = passes.flatMap(({ ask, plan }) => {
    const rate = takeoff.lines.find(({ key }) => key === ask.hours);
    const lanes = plan && laneHours(doc, takeoff, ask, plan);
    return rate && lanes ? [{ rate, lanes }] : [];
  });
  const [first] = pairs;
  if (!first) return null;
  const lanesH = pairs.reduce((sum, { lanes }) => sum + lanes.quantity.likely, 0);
  const rateH = pairs.reduce((sum, { rate }) => sum + rate.quantity.likely, 0);
  return (
    <button type="button" className={prepCss.why} onClick={() => askWhy(first.rate.key)}>
      <span>
        {lanesText.machineHours}
        <small>{lanesText.rateSays(figureText(showHours(rateH)))}</small>
      </span>
      <span>
        <Figure of={showHours(lanesH)} size="title" />
        <small>{laneDifference(lanesH, rateH)}</small>
      </span>
    </button>
  );
}
