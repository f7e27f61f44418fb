import type { Lit } from '../../canvas/paint/lit.ts';
import type { Line } from '../../takeoff/line.ts';

/** Which measured parts of the floor a takeoff line is made of; lines of single items light those items. */
const PARTS: Readonly<Record<string, Lit['parts']>> = {
  netFloor: ['net'],
  netFloorAll: ['net'],
  grossFloor: ['net'],
  field: ['field'],
  strip: ['strip'],
  allEdge: ['wall', 'obstruction', 'drop', 'hidden'],
  edge: ['wall', 'obstruction', 'drop'],
  'edge.wall': ['wall'],
  'edge.obstruction': ['obstruction'],
  'edge.drop': ['drop'],
  stopLine: ['stop'],
  facesInHandAreas: ['hidden'],
  tight: ['tight'],
  cutOff: ['tight'],
  handArea: ['tight'],
  'hours.machine': ['field'],
  'hours.edge': ['wall', 'obstruction', 'drop'],
  'hours.tight': ['tight'],
};

export function litOf(line: Line): Lit {
  return { zone: line.zone, parts: PARTS[line.code] ?? [], records: line.records };
}
