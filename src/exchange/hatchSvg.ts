import { HATCH_OPACITY, PAPER_MM_PER_PX } from '../canvas/look.ts';
import { hatchTile, TEXTURE_TILES, type HatchTile, type TextureTile } from '../canvas/paint/hatchTile.ts';
import { boxOf, type Box } from '../geometry/box.ts';
import type { Point } from '../geometry/floorShape.ts';
import { mm, pathData } from './svg.ts';

/*
 * Hatches on paper, as lines cut by the outline they fill. A repeating pattern would say the same in fewer
 * words, but browsers print patterns as coarse pictures; lines stay sharp on any printer.
 *
 *     +---------+
 *     |/\/\/\/\/|     rows of teeth over the box of the outline, hung on one origin,
 *     |/\/\/\/\/|     so that the teeth of neighbours run on
 *     +---------+
 */
const PX = PAPER_MM_PER_PX;

export type Filling = number | keyof typeof TEXTURE_TILES;

/** The filling of an outline: `d` is its path data and `points` its corners, mm of the sheet; `at` is where rows are hung. */
export function hatchSvg(d: string, points: readonly Point[], filling: Filling, at: Point): string {
  if (points.length === 0) return '';
  const name = `cut${outlineKey(`${filling} ${d}`)}`;
  const lean = typeof filling === 'number' ? hatchTile(filling).leanDeg : 0;
  const bounds = inTiles(points, at, lean);
  const drawn =
    typeof filling === 'number' ? rows(hatchTile(filling), bounds) : repeats(TEXTURE_TILES[filling], bounds);
  const hung = `translate(${mm(at[0])} ${mm(at[1])}) rotate(${lean}) scale(${PX})`;
  return `<clipPath id="${name}"><path d="${d}" clip-rule="evenodd"/></clipPath><g clip-path="url(#${name})"><g transform="${hung}">${drawn}</g></g>`;
}

/** The box of the outline as the tiles see it, px. */
function inTiles(points: readonly Point[], [x0, y0]: Point, leanDeg: number): Box {
  const angle = (-leanDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return boxOf(
    points.map(([x, y]): Point => {
      const [dx, dy] = [(x - x0) / PX, (y - y0) / PX];
      return [dx * cos - dy * sin, dx * sin + dy * cos];
    }),
  );
}

function steps(from: number, to: number, size: number): number[] {
  const first = Math.floor(from / size) - 1;
  return Array.from({ length: Math.ceil(to / size) + 1 - first }, (_, i) => (first + i) * size);
}

function rows({ width, height, path, stroke }: HatchTile, bounds: Box): string {
  const low = path[0]?.[1] ?? 0;
  const high = path[1]?.[1] ?? low;
  const across = steps(bounds.minX, bounds.maxX, width);
  const row = (y: number): Point[] => {
    if (low === high)
      return [
        [across[0] ?? 0, y + low],
        [across.at(-1) ?? 0, y + low],
      ];
    return across.flatMap((x): Point[] => [
      [x - width / 2, y + low],
      [x, y + high],
    ]);
  };
  const d = steps(bounds.minY, bounds.maxY, height)
    .map((y) => pathData(row(y), false))
    .join('');
  return `<path d="${d}" fill="none" stroke="black" stroke-width="${stroke}" stroke-opacity="${HATCH_OPACITY.paper}"/>`;
}

function repeats({ width, height, filled, strokes, stroke }: TextureTile, bounds: Box): string {
  const places = steps(bounds.minY, bounds.maxY, height).flatMap((y) =>
    steps(bounds.minX, bounds.maxX, width).map((x): Point => [x, y]),
  );
  const all = (paths: readonly (readonly Point[])[], closed: boolean): string =>
    places
      .flatMap(([dx, dy]) =>
        paths.map((path) =>
          pathData(
            path.map(([x, y]): Point => [x + dx, y + dy]),
            closed,
          ),
        ),
      )
      .join('');
  const spots = filled.length > 0 ? `<path d="${all(filled, true)}"/>` : '';
  const lines =
    strokes.length > 0 ? `<path d="${all(strokes, false)}" fill="none" stroke="black" stroke-width="${stroke}"/>` : '';
  return spots + lines;
}

/** A short name for an outline with its filling (FNV-1a, 32 bits): the same on every run. */
function outlineKey(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}
