import { PAPER_MM_PER_PX, PAPER_THEME } from '../canvas/look.ts';
import { plateOf, type Plate } from '../canvas/paint/plate.ts';
import type { AreaPrim, LinePrim, MarkPrim, Prim, TextPrim } from '../canvas/paint/prim.ts';
import { strokesOf } from '../canvas/paint/strokes.ts';
import type { Point } from '../geometry/floorShape.ts';
import { hatchSvg } from './hatchSvg.ts';
import { box, letters, mm, pathData } from './svg.ts';

/** Where the floor lies on the sheet: paper mm = floor mm / scale + at. */
export interface OnPaper {
  readonly scale: number;
  readonly at: Point;
}

const PX = PAPER_MM_PER_PX;

/** Screen px per floor mm that painters are asked for at a paper scale. */
export function paperPxPerMm(scale: number): number {
  return 1 / (scale * PX);
}

function placed({ scale, at }: OnPaper, points: readonly Point[]): Point[] {
  return points.map(([x, y]) => [x / scale + at[0], y / scale + at[1]]);
}

function areaSvg(prim: AreaPrim, paper: OnPaper): string {
  const d = prim.region
    .flat()
    .map((ring) => pathData(placed(paper, ring), true))
    .join('');
  if (d === '') return '';
  const opacity = (share: number): string => (share < 1 ? ` fill-opacity="${share}"` : '');
  const fill = prim.fill
    ? `<path d="${d}" fill="${PAPER_THEME[prim.fill]}" fill-rule="evenodd"${opacity(prim.opacity ?? 1)}/>`
    : '';
  const filling = prim.hatchCsp ?? prim.texture;
  return filling === undefined ? fill : fill + hatchSvg(d, placed(paper, prim.region.flat(2)), filling, paper.at);
}

function lineSvg(prim: LinePrim, paper: OnPaper): string {
  const { path, closed, bars, triangles, teethPx } = strokesOf(prim, paperPxPerMm(paper.scale));
  const d = pathData(placed(paper, path), closed);
  const stroke = (ink: string, px: number, more = ''): string =>
    `<path d="${d}" fill="none" stroke="${ink}" stroke-width="${mm(px * PX)}"${more}/>`;
  const ink = PAPER_THEME[prim.ink];
  const halo = prim.haloPx ? stroke('white', prim.px + 2 * prim.haloPx) : '';
  const dash = prim.dashPx ? ` stroke-dasharray="${prim.dashPx.map((px) => mm(px * PX)).join(' ')}"` : '';
  const barData = bars.map((bar) => pathData(placed(paper, bar), false)).join('');
  const triangleData = triangles.map((triangle) => pathData(placed(paper, triangle), true)).join('');
  return [
    halo,
    barData && `<path d="${barData}" fill="none" stroke="${ink}" stroke-width="${mm(teethPx * PX)}"/>`,
    triangleData && `<path d="${triangleData}" fill="${ink}"/>`,
    stroke(ink, prim.px, dash),
  ].join('');
}

function markSvg(prim: MarkPrim, paper: OnPaper): string {
  const [x, y] = placed(paper, [prim.at])[0] ?? [0, 0];
  const turn = prim.turnDeg ? ` rotate(${mm(prim.turnDeg)})` : '';
  const d = prim.paths
    .map((path) =>
      pathData(
        path.map(([px, py]) => [px * PX, py * PX]),
        prim.filled ?? false,
      ),
    )
    .join('');
  const ink = PAPER_THEME[prim.ink];
  const look = prim.filled ? `fill="${ink}"` : `fill="none" stroke="${ink}" stroke-width="${mm(prim.px * PX)}"`;
  return `<path transform="translate(${mm(x)} ${mm(y)})${turn}" d="${d}" ${look}/>`;
}

function besideSvg(plate: Plate): string {
  if (!plate.beside) return '';
  const { width, lines } = plate.beside;
  const left = (plate.width / 2) * PX;
  const rim = box(left, (-plate.height / 2) * PX, width * PX, plate.height * PX, { fill: 'white', line: 0.4 });
  return (
    rim +
    lines
      .map((line) =>
        letters(line.text, { x: left + line.x * PX, y: line.y * PX, size: line.px * PX, weight: line.weight }),
      )
      .join('')
  );
}

function textSvg(prim: TextPrim, paper: OnPaper): string {
  const plate = plateOf(prim);
  const [x, y] = placed(paper, [prim.at])[0] ?? [0, 0];
  const [dx, dy] = [plate.middle[0] * PX, plate.middle[1] * PX];
  const ink = prim.plate === 'solid' ? 'white' : 'black';
  const width = plate.width * PX;
  const height = plate.height * PX;
  const back =
    prim.plate === 'outlined'
      ? box(-width / 2, -height / 2, width, height, { fill: 'white', line: 0.4 })
      : prim.plate
        ? box(-width / 2, -height / 2, width, height, { fill: 'black' })
        : '';
  const centred = plate.lines.length === 1;
  const words = plate.lines
    .map((line) => {
      const look = { size: line.px * PX, weight: line.weight, ink, y: line.y * PX } as const;
      const said = letters(line.text, centred ? { ...look, x: 0, anchor: 'middle' } : { ...look, x: line.x * PX });
      const halo = prim.halo
        ? said.replace(
            '<text ',
            '<text stroke="white" stroke-width="1.4" stroke-linejoin="round" paint-order="stroke" ',
          )
        : said;
      return halo;
    })
    .join('');
  const turn = prim.turnDeg ? ` rotate(${mm(prim.turnDeg)})` : '';
  const leader = prim.leader
    ? `<path d="M0 0L${mm(dx)} ${mm(dy)}" stroke="white" stroke-width="1"/><path d="M0 0L${mm(dx)} ${mm(dy)}" stroke="black" stroke-width="0.35"/>`
    : '';
  return `<g transform="translate(${mm(x)} ${mm(y)})${turn}">${leader}<g transform="translate(${mm(dx)} ${mm(dy)})">${back}${words}${besideSvg(plate)}</g></g>`;
}

/** One prim as SVG in millimetres of the sheet. Page images stay on the screen. */
export function primSvg(prim: Prim, paper: OnPaper): string {
  switch (prim.kind) {
    case 'area':
      return areaSvg(prim, paper);
    case 'line':
      return lineSvg(prim, paper);
    case 'mark':
      return markSvg(prim, paper);
    case 'text':
      return textSvg(prim, paper);
    case 'image':
      return '';
  }
}
