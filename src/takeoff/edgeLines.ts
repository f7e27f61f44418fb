import type { RecordId } from '../model/cell.ts';
import { onFloor } from '../model/doc.ts';
import { sumOf } from './formula.ts';
import type { Line } from './line.ts';
import { namedOf } from './lyingIn.ts';
import { makeLine, plainLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured } from './terms.ts';

/** Faces that a hand tool follows beside machine field, by kind. */
export const EDGE_KINDS = ['wall', 'obstruction', 'drop'] as const;
export type EdgeKind = (typeof EDGE_KINDS)[number];

/** Code of the line that holds the metres of one kind of face. */
export const edgeCode = (kind: EdgeKind): string => `edge.${kind}`;

/** Edge metres by kind and summed, stop lines, faces inside hand areas, corners and obstructions of each zone. */
export function edgeLines(site: Site): Line[] {
  return site.zones.flatMap((zone) => zoneEdges(site, zone));
}

function zoneEdges(site: Site, { measure, prep, held }: ZoneWork): Line[] {
  const zone = prep.zone;
  const touched = recordsOfFaces(measure.faceLines.filter((line) => !line.hidden));
  const base = { trade: 'edge', unit: 'm', zone, held } as const;
  const kinds = EDGE_KINDS.map((kind) =>
    plainLine({
      ...base,
      code: edgeCode(kind),
      records: recordsOfFaces(measure.faceLines.filter((line) => !line.hidden && line.kind === kind)),
      term: measured(kind, measure.faces[kind], 'm', zone),
    }),
  );
  const terms = kinds.map((line, i) => measured(EDGE_KINDS[i] ?? '', line.quantity.likely, 'm', line.key));
  const edge = makeLine({
    ...base,
    code: 'edge',
    records: touched,
    formula: sumOf(EDGE_KINDS),
    terms,
  });
  const stops = measure.faceLines.filter((line) => line.kind === 'stop' && !line.hidden);
  const stop = plainLine({
    ...base,
    code: 'stopLine',
    records: recordsOfFaces(stops),
    term: measured('where the work stops', measure.faces.stop, 'm', zone),
  });
  const hidden = plainLine({
    ...base,
    code: 'facesInHandAreas',
    records: recordsOfFaces(measure.faceLines.filter((line) => line.hidden)),
    term: measured('faces with no machine field beside them', measure.faces.hidden, 'm', zone),
  });
  return [
    edge,
    ...kinds,
    stop,
    ...grooves(site, { measure, prep, held }, stop),
    hidden,
    ...countLines(site, { measure, prep, held }, touched),
  ];
}

/** The groove that a coating ends in, where a zone asks for one: it is cut, so it waits for what lies in the slab. */
function grooves(site: Site, { measure, prep, held }: ZoneWork, stop: Line): Line[] {
  if (prep.record?.groove !== true || measure.faces.stop <= 0) return [];
  return [
    plainLine({
      code: 'groove',
      trade: 'edge',
      unit: 'm',
      zone: prep.zone,
      held: held ?? (site.noCutting ? 'inSlab' : null),
      records: [prep.record.id, ...stop.records],
      term: measured('along the stop lines', measure.faces.stop, 'm', stop.key),
    }),
  ];
}

function countLines({ doc, floor }: Site, { measure, prep, held }: ZoneWork, touched: readonly RecordId[]): Line[] {
  const base = { unit: 'number', zone: prep.zone, held } as const;
  const inner = plainLine({
    ...base,
    trade: 'edge',
    code: 'innerCorners',
    records: touched,
    term: measured('inner corners beside machine field', measure.innerCorners, 'number', prep.zone),
  });
  const outer = plainLine({
    ...base,
    trade: 'edge',
    code: 'outerCorners',
    records: touched,
    term: measured('outer corners beside machine field', measure.outerCorners, 'number', prep.zone),
  });
  const standing = namedOf(onFloor(doc, 'obstruction', floor), measure.solids).filter(
    (item) => item.under !== 'clearedBefore',
  );
  const obstructions = plainLine({
    ...base,
    trade: 'spot',
    code: 'obstructions',
    records: standing.map(({ id }) => id),
    term: measured('obstructions that stand in the zone', standing.length, 'number', prep.zone),
  });
  return [inner, outer, obstructions];
}

function recordsOfFaces(lines: readonly { readonly of: string }[]): RecordId[] {
  return [...new Set(lines.map((line) => line.of).filter((id) => id.includes(':')))] as RecordId[];
}
