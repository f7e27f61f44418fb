import { useEffect, type ReactElement } from 'react';
import css from './Cards.module.css';
import { CrackTable } from './CrackTable.tsx';
import { StepRow } from './StepRow.tsx';
import { useCrewZones, type CrewZone } from './useCrewZones.ts';
import { cx } from '../look/cx.ts';
import { HoldBar } from '../parts/HoldBar.tsx';
import { Pictogram } from '../parts/Pictogram.tsx';
import { Tag } from '../parts/Tag.tsx';
import { unitSign } from '../parts/Figure.tsx';
import { useUnits } from '../plan.ts';
import { CautionList } from '../prep/CautionList.tsx';
import { pick, session, useSession } from '../session.ts';
import { figureText, showArea } from '../../model/showNumber.ts';
import { paperWords } from '../../words/paperWords.ts';
import { crewText } from '../../words/siteWords.ts';

/** The picked zone in large type: its passes in order with a box to tick, its cautions and cracks. Nothing of money. */
export function ZoneCards(): ReactElement {
  const zones = useCrewZones();
  const picked = useSession((now) => now.picked);
  const shown = zones.find((zone) => picked.includes(zone.id)) ?? zones[0];
  const firstId = shown?.id;
  // The card and the plan speak of the same zone from the first look on.
  useEffect(() => {
    if (firstId && session().picked.length === 0) pick([firstId]);
  }, [firstId]);
  if (!shown) return <p className={css.none}>{crewText.nothingHelp}</p>;
  return (
    <div className={css.cards}>
      {zones.length > 1 && (
        <div className={css.choose} role="group" aria-label={crewText.cards}>
          {zones.map((zone) => (
            <button
              key={zone.key}
              type="button"
              className={cx(css.plate, zone.key === shown.key && css.on)}
              aria-pressed={zone.key === shown.key}
              aria-label={`${zone.number} ${zone.name}`}
              onClick={() => pick([zone.id])}
            >
              {zone.number}
            </button>
          ))}
        </div>
      )}
      <ZoneCard zone={shown} />
    </div>
  );
}

function ZoneCard({ zone }: { readonly zone: CrewZone }): ReactElement {
  const units = useUnits();
  const area = unitSign(figureText(showArea(zone.measure.netM2, units)));
  return (
    <article aria-label={zone.name}>
      <header className={css.head}>
        <Tag zone>{zone.number}</Tag>
        <div>
          <h2>{[zone.name, zone.csp].filter(Boolean).join(', ')}</h2>
          <p>{area}</p>
        </div>
      </header>
      {zone.stops.length > 0 ? (
        zone.stops.map((hold) => (
          <div key={hold} className={css.stop}>
            <Pictogram name="hold" onInk head />
            <div>
              <b>{crewText.stop}</b>
              <p>{paperWords.holds[hold]}</p>
            </div>
          </div>
        ))
      ) : (
        <>
          {zone.noCutting && (
            <HoldBar pictogram={<Pictogram name="locate" onInk />} title={crewText.stop} sentence={paperWords.inSlab} />
          )}
          <ol>
            {zone.steps.map((step, index) => (
              <li key={`${step.of} ${step.what}`}>
                <StepRow step={step} number={index + 1} csp={zone.csp} />
              </li>
            ))}
          </ol>
          <CautionList prep={zone.prep} large />
          <CrackTable zone={zone} />
        </>
      )}
    </article>
  );
}
