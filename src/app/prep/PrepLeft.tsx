import { useState, type ReactElement } from 'react';
import css from './PrepLeft.module.css';
import { DrawingZone } from './DrawingZone.tsx';
import { PlanLegend } from './PlanLegend.tsx';
import { ZoneOrder } from './ZoneOrder.tsx';
import { usePickedZone, usePickOnOpen, useZones } from './usePickedZone.ts';
import { cspText, systemTerm, zoneKey, zoneName, zoneNumber } from './zoneNames.ts';
import { cx } from '../look/cx.ts';
import { Button } from '../parts/Button.tsx';
import { DockHead } from '../parts/Dock.tsx';
import { Figure } from '../parts/Figure.tsx';
import { Tag } from '../parts/Tag.tsx';
import { ToolDrawing } from '../parts/ToolDrawing.tsx';
import { newId, run, useDoc, useFloor, useTakeoff, useUnits } from '../plan.ts';
import { arm, openPanel, pick, useSession } from '../session.ts';
import { figureText, showArea } from '../../model/showNumber.ts';
import { showFineSize } from '../../model/showLength.ts';
import type { Held } from '../../model/doc.ts';
import { REST } from '../../geometry/floorShape.ts';
import { requiredCsp } from '../../takeoff/profile.ts';
import { prepText } from '../../words/stageWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** Zones of the floor, what no zone covers, and the legend of the drawing beside it. */
export function PrepLeft({ legend = true }: { readonly legend?: boolean }): ReactElement {
  const zones = useZones();
  const floor = useFloor();
  const units = useUnits();
  const armed = useSession((now) => now.tool === 'zone');
  const { takeoff } = useTakeoff();
  const [ordering, setOrdering] = useState(false);
  usePickOnOpen(zones);
  const overlap = zones.length > 1 && (takeoff?.faults.some((fault) => fault.code === 'zonesOverlap') ?? false);
  const restM2 = takeoff?.measure.zones.find((zone) => zone.id === REST)?.netM2 ?? 0;

  function coverRest(): void {
    if (!floor) return;
    const id = newId('zone');
    if (run('drawZone', { id, floor: floor.id, ring: null })) pick([id]);
  }
  return (
    <div className={css.left}>
      <DockHead>{prepText.zones}</DockHead>
      {zones.length === 0 && (
        <div className={css.none}>
          <b>{prepText.noZones}</b>
          <p>{prepText.noZonesHelp}</p>
        </div>
      )}
      <ul>
        {zones.map((zone) => (
          <li key={zone.id}>
            <ZoneRow zone={zone} />
          </li>
        ))}
      </ul>
      {zones.every((zone) => zone.covers !== 'rest') && (
        <div className={css.rest}>
          <span>{prepText.rest}</span>
          <Figure of={showArea(restM2, units)} />
          {restM2 >= 0.005 && (
            <Button size="desk" wide onClick={coverRest}>
              {zones.length === 0 ? prepText.wholeSlab : prepText.makeRest}
            </Button>
          )}
        </div>
      )}
      <div className={css.draw}>
        {armed ? (
          <DrawingZone />
        ) : (
          <Button wide icon={<ToolDrawing of="zone" />} onClick={() => arm('zone')}>
            {prepText.drawZone}
          </Button>
        )}
        {overlap && (
          <Button size="desk" wide onClick={() => setOrdering(true)}>
            {prepText.orderTitle}
          </Button>
        )}
        <Button size="desk" wide onClick={() => openPanel('questions')}>
          {takeoffText.questions}
        </Button>
      </div>
      {legend && <PlanLegend />}
      {ordering && <ZoneOrder zones={zones} onClose={() => setOrdering(false)} />}
    </div>
  );
}

function ZoneRow({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const units = useUnits();
  const picked = usePickedZone()?.id === zone.id;
  const { takeoff } = useTakeoff();
  const csp = useDoc(() => requiredCsp(zone));
  const held = takeoff?.holds.some((hold) => hold.zone === zoneKey(zone) && hold.kind !== 'inSlab') ?? false;
  const measure = takeoff?.measure.zones.find((each) => each.id === zoneKey(zone));
  const thicknessMm = zone.system?.thicknessMm;
  const laid = [systemTerm(zone), thicknessMm ? figureText(showFineSize(thicknessMm, units)) : null]
    .filter(Boolean)
    .join(', ');
  return (
    <button
      type="button"
      className={cx(css.zone, picked && css.picked)}
      aria-pressed={picked}
      onClick={() => pick([zone.id])}
    >
      <Tag zone>{zoneNumber(zone)}</Tag>
      <span className={css.words}>
        <b>{zoneName(zone)}</b>
        <span>{laid || prepText.noProfile}</span>
        <span className={css.figures}>
          <Figure of={showArea(measure?.netM2 ?? 0, units)} size="lead" />
          <span className={css.csp}>{held ? prepText.held : (cspText(csp) ?? '')}</span>
        </span>
      </span>
    </button>
  );
}
