import type { ReactElement } from 'react';
import css from './HandoverStage.module.css';
import { NumberField } from '../parts/NumberField.tsx';
import { Tag } from '../parts/Tag.tsx';
import { useDoc, useTakeoff } from '../plan.ts';
import { setHours, tickOf } from '../crew/ticks.ts';
import { useCrewZones, type CrewZone } from '../crew/useCrewZones.ts';
import { showHours, figureText } from '../../model/showNumber.ts';
import { zoneHours } from '../../takeoff/lineTable.ts';
import { handoverText } from '../../words/siteWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** What was planned beside what was ticked off, and the hours it really took. */
export function WorkDone(): ReactElement {
  const zones = useCrewZones();
  return (
    <section className={css.section}>
      <div className={css.head}>
        <h2>{handoverText.work}</h2>
      </div>
      <p className={css.note}>{zones.length === 0 ? handoverText.noWork : handoverText.workHelp}</p>
      <ul>
        {zones.map((zone) => (
          <li key={zone.key}>
            <ZoneWorkDone zone={zone} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function ZoneWorkDone({ zone }: { readonly zone: CrewZone }): ReactElement {
  const { takeoff } = useTakeoff();
  const done = useDoc((doc) => zone.steps.filter((step) => tickOf(doc, step.of, step.what)?.done).length);
  const actual = useDoc((doc) => tickOf(doc, zone.id, 'hours')?.actualHours ?? null);
  const hours = takeoff && zone.stops.length === 0 ? zoneHours(takeoff, zone.key) : null;
  return (
    <div className={css.work} role="group" aria-label={zone.name}>
      <Tag zone>{zone.number}</Tag>
      <span className={css.words}>
        {zone.name}
        <small>{zone.stops.length > 0 ? takeoffText.heldTitle : handoverText.ticked(done, zone.steps.length)}</small>
        {hours && (
          <small>
            {handoverText.planned} {figureText(showHours(hours.likely))}
          </small>
        )}
      </span>
      <div className={css.hours}>
        <NumberField
          label={handoverText.actual}
          unit="h"
          value={actual}
          optional
          min={0}
          max={10_000}
          onSet={(value) => setHours(zone.id, value)}
        />
      </div>
    </div>
  );
}
