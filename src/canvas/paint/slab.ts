import type { Point } from '../../geometry/floorShape.ts';
import { signedArea } from '../../geometry/ring.ts';
import type { Held } from '../../model/doc.ts';
import type { Edge } from '../../model/records/slab.ts';
import { LINE } from '../look.ts';
import type { LinePrim, Paint, Prim } from './prim.ts';
import { slabRing } from './view.ts';

/** Where a page lies under the floor it must stay readable. */
const OVER_PAGE_OPACITY = 0.55;
export const UPSTAND_PX = 1.6;

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
  readonly path: readonly Point[];
  readonly closed: boolean;
}

/** Neighbouring edges of one key become one path, so that corners mitre. */
function runsOf(sides: readonly Side[], keyOf: (edge: Edge) => string): Run[] {
  const keys = sides.map(({ edge }) => keyOf(edge));
  const first = keys.findIndex((key, i) => key !== keys.at(i - 1));
  const [start] = sides;
  if (first < 0 && start) return [{ key: keyOf(start.edge), path: sides.map(({ from }) => from), closed: true }];
  const runs: Run[] = [];
  for (const side of [...sides.slice(first), ...sides.slice(0, first)]) {
    const key = keyOf(side.edge);
    const last = runs.at(-1);
    if (last?.key === key) runs[runs.length - 1] = { ...last, path: [...last.path, side.to] };
    else runs.push({ key, path: [side.from, side.to], closed: false });
  }
  return runs;
}

type LineLook = Omit<LinePrim, 'kind' | 'path' | 'closed'>;

/** A doorway is a gap in the wall: its threshold shows the floor's colour. */
const THRESHOLD: LineLook = { ink: 'slab', px: LINE.wall, shiftPx: LINE.wall / 2 };

/** How an edge of each kind is drawn, going round with the floor on the right. */
export const EDGE_LOOKS: Readonly<Record<ReturnType<typeof edgeLook>, LineLook>> = {
  wall: { ink: 'ink', px: LINE.wall, shiftPx: LINE.wall / 2 },
  stop: { ink: 'ink', px: 3, teeth: { shape: 'bar', everyPx: 16, reachPx: LINE.wall, px: 2 } },
  drop: { ink: 'ink', px: LINE.edge, teeth: { shape: 'triangle', everyPx: 24, reachPx: 12, px: 0 } },
  run: { ink: 'ink', px: LINE.item, dashPx: [4, 8] },
};

function drawn({ path, closed }: Run, look: LineLook): Prim {
  return { kind: 'line', path, closed, ...look };
}

/** Edges: walls drawn outside the floor so that areas stay true, doorways and stop lines, drops, where it runs on. */
export const paintSlabEdges: Paint<Held<'slab'>> = (slab) => {
  const sides = sidesOf(slab);
  const thresholds = runsOf(sides, (edge) => (edge.kind === 'doorway' ? 'doorway' : '')).filter(
    (run) => run.key !== '',
  );
  const upstands = runsOf(sides, (edge) => (edge.upstand ? 'upstand' : '')).filter((run) => run.key !== '');
  return [
    ...thresholds.map((run) => drawn(run, THRESHOLD)),
    ...runsOf(sides, edgeLook).map((run) => drawn(run, EDGE_LOOKS[run.key as ReturnType<typeof edgeLook>])),
    ...upstands.map((run) => drawn(run, { ink: 'ink', px: UPSTAND_PX, shiftPx: -LINE.wall })),
  ];
};
