import type { ReactElement } from 'react';
import css from './ZoneOrder.module.css';
import { zoneName, zoneNumber } from './zoneNames.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Tag } from '../parts/Tag.tsx';
import { run, useFloor, useDoc } from '../plan.ts';
import { onFloor, type Held } from '../../model/doc.ts';
import { machineText, prepText } from '../../words/stageWords.ts';

interface ZoneOrderProps {
  readonly zones: readonly Held<'zone'>[];
  readonly onClose: () => void;
}

/** Which zone wins where two overlap: the upper one. */
export function ZoneOrder({ zones, onClose }: ZoneOrderProps): ReactElement {
  const floor = useFloor();
  const rising = useDoc((doc) =>
    floor ? onFloor(doc, 'zone', floor.id).filter((zone) => zone.covers === 'ring') : [],
  );
  const topFirst = rising.toReversed();

  /** Puts the zone at place `to` of the list, counted from the top. */
  function move(zone: Held<'zone'>, to: number): void {
    const others = topFirst.filter((each) => each.id !== zone.id);
    run('reorder', { id: zone.id, before: others[to - 1]?.id ?? null });
  }
  return (
    <Dialog
      title={prepText.orderTitle}
      open
      onClose={onClose}
      foot={<Button onClick={onClose}>{machineText.close}</Button>}
    >
      <p>{prepText.orderHelp}</p>
      <ol className={css.list}>
        {topFirst.map((zone, index) => (
          <li key={zone.id}>
            <Tag zone>{zoneNumber(zone)}</Tag>
            <b>{zoneName(zone)}</b>
            {index > 0 && (
              <Button size="desk" aria-label={prepText.moveUp(zoneName(zone))} onClick={() => move(zone, index - 1)}>
                {prepText.up}
              </Button>
            )}
            {index < topFirst.length - 1 && (
              <Button size="desk" aria-label={prepText.moveDown(zoneName(zone))} onClick={() => move(zone, index + 1)}>
                {prepText.down}
              </Button>
            )}
          </li>
        ))}
      </ol>
      {zones.some((zone) => zone.covers === 'rest') && <p>{prepText.restLast}</p>}
    </Dialog>
  );
}
