import type { ReactElement } from 'react';
import css from './Cards.module.css';
import { setTick, tickOf } from './ticks.ts';
import type { CrewZone } from './useCrewZones.ts';
import { cx } from '../look/cx.ts';
import { Icon } from '../parts/Icon.tsx';
import { useDoc, useUnits } from '../plan.ts';
import { onFloor, type Held } from '../../model/doc.ts';
import { crackDoText } from '../../exchange/zoneCardText.ts';
import { showFineSize } from '../../model/showLength.ts';
import { figureText, showRun } from '../../model/showNumber.ts';
import { crewText } from '../../words/siteWords.ts';

/** Every crack of the zone with what to do about it. */
export function CrackTable({ zone }: { readonly zone: CrewZone }): ReactElement | null {
  const cracks = useDoc((doc) => {
    const floor = zone.prep.record?.floor ?? zone.id;
    return onFloor(doc, 'crack', floor).filter((crack) => (zone.measure.lengthM[crack.id] ?? 0) > 0);
  });
  if (cracks.length === 0) return <p className={css.none}>{crewText.noCracks}</p>;
  return (
    <table className={css.cracks}>
      <caption>{crewText.cracks}</caption>
      <thead>
        <tr>
          <th scope="col">{crewText.crack}</th>
          <th scope="col">{crewText.length}</th>
          <th scope="col">{crewText.width}</th>
          <th scope="col">{crewText.doWhat}</th>
          <th scope="col">{crewText.done}</th>
        </tr>
      </thead>
      <tbody>
        {cracks.map((crack) => (
          <CrackRow key={crack.id} crack={crack} metres={zone.measure.lengthM[crack.id] ?? 0} />
        ))}
      </tbody>
    </table>
  );
}

function CrackRow({ crack, metres }: { readonly crack: Held<'crack'>; readonly metres: number }): ReactElement {
  const units = useUnits();
  const done = useDoc((doc) => tickOf(doc, crack.id, 'crack')?.done ?? false);
  return (
    <tr>
      <th scope="row">{crack.tag}</th>
      <td>{figureText(showRun(metres, units))}</td>
      <td>{crack.widthMm === null ? '–' : figureText(showFineSize(crack.widthMm, units))}</td>
      <td>{crackDoText(crack, units)}</td>
      <td>
        <button
          type="button"
          role="checkbox"
          aria-checked={done}
          aria-label={`${crewText.done}: ${crack.tag}`}
          onClick={() => setTick(crack.id, 'crack', !done)}
        >
          <span className={cx(css.box, css.small, done && css.done)}>{done && <Icon name="done" />}</span>
        </button>
      </td>
    </tr>
  );
}
