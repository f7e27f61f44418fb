import { formRing } from '../geometry/formRing.ts';
import { perimeter } from '../geometry/ring.ts';
import type { RecordId } from '../model/cell.ts';
import { onFloor } from '../model/doc.ts';
import { EDGE_KINDS, type EdgeKind } from './edgeLines.ts';
import { namedOf } from './lyingIn.ts';
import type { Site, ZoneWork } from './site.ts';
import { upstandRuns } from './upstandLines.ts';

/** A run of edge that a grinder gets at with more trouble than at a plain wall. */
export interface HardEdge {
  readonly record: RecordId;
  readonly name: string;
  readonly kind: EdgeKind;
  readonly metres: number;
  /** Beside machine field, and so among the edge metres of its kind; false: inside a pit, besides them. */
  readonly beside: boolean;
}

/**
 * Metres of edge under a cove base that stays, by kind of face, beside machine field; and along the inside of a pit
 * whose floor is worked by hand.
 */
export function hardEdges(site: Site, zone: ZoneWork): HardEdge[] {
  const coves = EDGE_KINDS.flatMap((kind) =>
    upstandRuns(site, zone, (line) => line.kind === kind && !line.hidden)
      .filter(({ upstand }) => upstand.kind === 'coveBase' && upstand.treat === 'keep')
      .map(({ record, name, metres }): HardEdge => ({ record, name, kind, metres, beside: true })),
  );
  const pits = namedOf(onFloor(site.doc, 'obstruction', site.floor), zone.measure.solids)
    .filter((item) => item.kind === 'pit' && item.under === 'byHand')
    .map((pit): HardEdge => ({
      record: pit.id,
      name: `inside ${pit.tag}`,
      kind: 'obstruction',
      metres: perimeter(formRing(pit.shape)) / 1000,
      beside: false,
    }));
  return [...coves, ...pits];
}
