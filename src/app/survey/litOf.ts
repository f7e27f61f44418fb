import type { Lit } from '../../canvas/paint/lit.ts';
import type { Line } from '../../takeoff/line.ts';

/** Which measured parts of the floor a takeoff line is made of; lines of single items light those items. */
const PARTS: Readonly<Record<string, Lit['parts']>> = {
  netFloor: ['net'],
  netFloorAll: ['net'],
  grossFloor: ['net'],
  field: ['field'],
  fieldOf: ['field'],
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
  const parts = PARTS[line.code] ?? [];
  const machine = machineOf(line);
  return { zone: line.zone, parts, records: line.records, ...(machine ? { machine } : {}) };
}

/** Where machines follow each other, a line of one of them lights its own field. */
function machineOf({ key, code }: Line): string | null {
  const of = key.split('|');
  if (code === 'fieldOf') return of[2] ?? null;
  return code === 'hours.machine' ? (of[3] ?? null) : null;
}
