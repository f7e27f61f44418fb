import type { Point } from '../../geometry/floorShape.ts';
import { signedArea } from '../../geometry/ring.ts';
import type { Held } from '../../model/doc.ts';
import type { Edge } from '../../model/records/slab.ts';
import { LINE } from '../look.ts';
import type { LinePrim, Paint, Prim } from './prim.ts';
import { slabRing } from './view.ts';

/** Where a page lies under the floor it must stay readable. */
const OVER_PAGE_OPACITY = 0.55;
const UPSTAND_PX = 1.6;

export const paintSlab: Paint<Held<'slab'>, { readonly overPage: boolean }> = (slab, { overPage }) => [
  { kind: 'area', region: [[slabRing(slab)]], fill: 'slab', ...(overPage ? { opacity: OVER_PAGE_OPACITY } : {}) },
];

interface Side {
  readonly from: Point;
  readonly to: Point;
  readonly edge: Edge;
}

/** Edges in a direction that has the floor on the right: what is drawn to the left lies outside. */
function sidesOf(slab: Held<'slab'>): Side[] {
  const ring = slabRing(slab);
  const sides = slab.outline.map((corner, i) => ({
    from: ring[i] as Point,
    to: ring[(i + 1) % ring.length] as Point,
    edge: corner.edge,
  }));
  if (signedArea(ring) >= 0) return sides;
  return sides.map(({ from, to, edge }) => ({ from: to, to: from, edge })).toReversed();
}

/** How an edge is drawn: an open edge runs on, a doorway stops, unless they say otherwise. */
export function edgeLook(edge: Edge): 'wall' | 'stop' | 'run' | 'drop' {
  if (edge.kind === 'wall' || edge.kind === 'drop') return edge.kind;
  return (edge.beyond ?? (edge.kind === 'open' ? 'run' : 'stop')) === 'run' ? 'run' : 'stop';
}

interface Run {
  readonly key: string;
  readonly look: ReturnType<typeof edgeLook>;
  readonly doorway: boolean;
  readonly upstand: boolean;
  readonly path: readonly Point[];
  readonly closed: boolean;
}

/** Neighbouring edges of one look become one path, so that corners mitre. */
function runsOf(sides: readonly Side[]): Run[] {
  const keyOf = ({ edge }: Side): string => `${edgeLook(edge)} ${edge.kind === 'doorway'} ${edge.upstand !== undefined}`;
  const breaks = sides.findIndex((side, i) => keyOf(side) !== keyOf(sides.at(i - 1) as Side));
  const turned = breaks < 0 ? sides : [...sides.slice(breaks), ...sides.slice(0, breaks)];
  const runs: Run[] = [];
  for (const side of turned) {
    const key = keyOf(side);
    const last = runs.at(-1);
    if (last?.key === key) runs[runs.length - 1] = { ...last, path: [...last.path, side.to] };
    else
      runs.push({
        key,
        look: edgeLook(side.edge),
        doorway: side.edge.kind === 'doorway',
        upstand: side.edge.upstand !== undefined,
        path: [side.from, side.to],
        closed: false,
      });
  }
  const [only] = runs;
  return breaks < 0 && only ? [{ ...only, path: only.path.slice(0, -1), closed: true }] : runs;
}

function lineOf(run: Run, more: Omit<LinePrim, 'kind' | 'path' | 'closed' | 'ink'> & Partial<Pick<LinePrim, 'ink'>>): Prim {
  return { kind: 'line', path: run.path, closed: run.closed, ink: 'ink', ...more };
}

function runPrims(run: Run): Prim[] {
  const upstand = run.upstand ? [lineOf(run, { px: UPSTAND_PX, shiftPx: -LINE.wall })] : [];
  if (run.look === 'wall') return [lineOf(run, { px: LINE.wall, shiftPx: LINE.wall / 2 }), ...upstand];
  // A doorway is a gap in the wall: its threshold shows the floor's colour.
  const gap = run.doorway ? [lineOf(run, { px: LINE.wall, shiftPx: LINE.wall / 2, ink: 'slab' })] : [];
  if (run.look === 'stop') {
    const teeth = { shape: 'bar', everyPx: 16, reachPx: LINE.wall, px: 2 } as const;
    return [...gap, lineOf(run, { px: 3, teeth }), ...upstand];
  }
  if (run.look === 'drop') {
    const teeth = { shape: 'triangle', everyPx: 24, reachPx: 12, px: 0 } as const;
    return [lineOf(run, { px: LINE.edge, teeth }), ...upstand];
  }
  return [...gap, lineOf(run, { px: LINE.item, dashPx: [4, 8] }), ...upstand];
}

/** Edges: walls drawn outside the floor so that areas stay true, doorways and stop lines, drops, where it runs on. */
export const paintSlabEdges: Paint<Held<'slab'>> = (slab) => runsOf(sidesOf(slab)).flatMap(runPrims);
