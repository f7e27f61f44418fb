import type { ReactElement } from 'react';
import css from './WorkTable.module.css';
import { useNames } from './useNames.ts';
import { WorkLine } from './WorkLine.tsx';
import { Tag } from '../parts/Tag.tsx';
import { useDoc, useFloor } from '../plan.ts';
import { cspText, zoneNumber } from '../prep/zoneNames.ts';
import { groupName } from '../../exchange/workSheet.ts';
import { onFloor, recordOf, type Doc, type Held } from '../../model/doc.ts';
import type { RecordId } from '../../model/cell.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import type { ZoneId } from '../../takeoff/prep.ts';
import { requiredCsp } from '../../takeoff/profile.ts';
import type { WorkGroup } from '../../takeoff/workList.ts';
import { takeoffText } from '../../words/whyWords.ts';
import { workText } from '../../words/workWords.ts';

interface WorkHeadingProps {
  readonly takeoff: Takeoff;
  readonly group: WorkGroup;
  readonly narrow: boolean;
}

/** What a group of the list is of: a zone with its number and profile, a phase with its zones, the crew of a phase. */
export function WorkHeading({ takeoff, group, narrow }: WorkHeadingProps): ReactElement {
  const doc = useDoc((now) => now);
  const floor = useFloor()?.id ?? null;
  const names = useNames();
  const record = group.zone === null ? null : zoneRecord(doc, floor, group.zone);
  const csp = cspText(requiredCsp(record));
  const name =
    group.zone === null
      ? groupName(doc, takeoff, group)
      : record
        ? (record.name ?? names.zone(group.zone))
        : takeoffText.rest;
  const head = (
    <span className={css.name}>
      {record && <Tag>{zoneNumber(record)}</Tag>}
      <span>
        {csp === null ? name : `${name}, ${csp}`}
        {group.kind === 'phase' && group.zones.length > 0 && (
          <small>{workText.zones(group.zones.map((zone) => zoneWords(doc, floor, zone)))}</small>
        )}
      </span>
    </span>
  );
  const quantity = group.netFloor?.quantity ? { quantity: group.netFloor.quantity, unit: 'm2' } : null;
  const line = { name, head, quantity, quantityLines: group.netFloor?.lines ?? [], narrow };
  if (group.hours) return <WorkLine {...line} kind="heading" hours={group.hours} />;
  return (
    <WorkLine
      {...line}
      kind="heading"
      hours={{ quantity: null, held: group.held, lines: [] }}
      instead={group.held === null ? workText.noHours : workText.heldUntil}
    />
  );
}

function zoneRecord(doc: Doc, floor: RecordId | null, zone: ZoneId): Held<'zone'> | null {
  if (zone !== 'rest') return recordOf(doc, 'zone', zone);
  return floor === null ? null : (onFloor(doc, 'zone', floor).find(({ covers }) => covers === 'rest') ?? null);
}

function zoneWords(doc: Doc, floor: RecordId | null, zone: ZoneId): string {
  const record = zoneRecord(doc, floor, zone);
  return record ? zoneNumber(record) : takeoffText.rest.toLowerCase();
}
