import type { ViewNotes } from '../canvas/paint/view.ts';
import { onFloor, type Doc } from '../model/doc.ts';
import { showLength } from '../model/showLength.ts';
import { figureText } from '../model/showNumber.ts';
import type { Units } from '../model/units.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { requiredCsp } from '../takeoff/profile.ts';
import { tightSpots } from '../takeoff/spotLines.ts';

/** What painting needs of a takeoff: measured outlines, profiles, holds, numbers of tight spots. The same on screen and paper. */
export function viewNotes(doc: Doc, floor: string, takeoff: Takeoff | null, units: Units): ViewNotes {
  const zones = onFloor(doc, 'zone', floor);
  const mine = takeoff?.floor === floor ? takeoff : null;
  const onHold = new Set<string>(
    (mine?.holds ?? []).flatMap(({ kind, zone }) => (zone !== null && kind !== 'inSlab' ? [zone] : [])),
  );
  return {
    measure: mine && mine.blocked === null ? mine.measure : null,
    csp: Object.fromEntries(zones.map((zone) => [zone.id, requiredCsp(zone)?.min ?? null])),
    held: new Set(zones.filter((zone) => onHold.has(zone.covers === 'rest' ? 'rest' : zone.id)).map(({ id }) => id)),
    tight: mine ? tightSpots(mine.measure.zones) : [],
    lengthText: (mm) => figureText(showLength(mm, units)),
  };
}
