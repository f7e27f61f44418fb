import { useEffect } from 'react';
import { onFloor, recordOf, type Held } from '../../model/doc.ts';
import { useDoc, useFloor } from '../plan.ts';
import { pick, useSession } from '../session.ts';

/** Zones of the floor that is shown, in the order people number them. */
export function useZones(): readonly Held<'zone'>[] {
  const floor = useFloor();
  const zones = useDoc((doc) => (floor ? onFloor(doc, 'zone', floor.id) : []));
  return zones.toSorted((a, b) => a.tag.localeCompare(b.tag, 'en', { numeric: true }));
}

/** The zone that Prep speaks of: the picked one, else none. */
export function usePickedZone(): Held<'zone'> | null {
  const picked = useSession((now) => now.picked);
  return useDoc((doc) => picked.map((id) => recordOf(doc, 'zone', id)).find((zone) => zone !== null) ?? null);
}

/** Prep opens on the first zone, so that its dock is never empty while there is something to set. */
export function usePickOnOpen(zones: readonly Held<'zone'>[]): void {
  const first = zones[0]?.id ?? null;
  useEffect(() => {
    if (first) pickWhenNone(first);
    // Only when the stage opens or its first zone appears: later the hand decides.
  }, [first]);
}

function pickWhenNone(first: Held<'zone'>['id']): void {
  const { picked, tool } = useSession.getState();
  if (tool === 'pick' && !picked.some((id) => id.startsWith('zone:'))) pick([first]);
}
