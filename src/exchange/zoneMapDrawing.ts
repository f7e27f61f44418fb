import { boxOf, type Box } from '../geometry/box.ts';
import type { Point } from '../geometry/floorShape.ts';
import { LETTERS, PAPER_MM_PER_PX } from '../canvas/look.ts';
import { cross, dot, lengthOf, minus, unit } from '../geometry/point.ts';
import { dimensionPrims } from '../canvas/paint/dimension.ts';
import { PAINT_ORDER, paintFloor, SHOW_ALL, type Showing } from '../canvas/paint/paintFloor.ts';
import type { Look, Prim } from '../canvas/paint/prim.ts';
import { planView, slabRing, type PlanView, type ZoneView } from '../canvas/paint/view.ts';
import { paperWords } from '../words/paperWords.ts';
import { fitsAt, largestScale, type FloorExtent, type Room } from './paper.ts';
import { paperPxPerMm, primSvg, type OnPaper } from './primsSvg.ts';
import { box, mm } from './svg.ts';
import type { RecordType } from '../model/records/all.ts';
import type { Units } from '../model/units.ts';
import { viewNotes } from './viewNotes.ts';
import { cspOf } from './zoneCards.ts';
import { tapeText } from './zoneCardText.ts';
import type { ZoneMapInput } from './zoneMapInput.ts';

/** Dimension lines stand so far outside the floor, px of the painters. */
const DIMENSION_OUT_PX = 36;
/** Room beside the floor on paper, mm: walls and tags all round, and beyond it dimension lines above and at the left. */
const AROUND_MM = 3.5;
const DIMENSION_MM = 8.5;
/** Plates stay this near to the floor where a dimension line runs, mm. */
const BEFORE_DIMENSION_MM = 7.3;

/** What the crew finds on its map: readings and photographs are for the office. */
const ON_PAPER: ReadonlySet<RecordType> = new Set([
  'zone',
  'crack',
  'joint',
  'finding',
  'obstruction',
  'opening',
  'outOfScope',
  'steps',
  'entrance',
  'service',
  'note',
  'dimension',
] as const);

export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export function mapView(input: ZoneMapInput): PlanView {
  return planView(input.doc, input.floor, viewNotes(input.doc, input.floor, input.takeoff, input.units));
}

function extentOf(view: PlanView): Box {
  return boxOf(view.slabs.flatMap(slabRing));
}

function inner(frame: Frame): Frame {
  return {
    x: frame.x + DIMENSION_MM,
    y: frame.y + DIMENSION_MM,
    widthMm: frame.widthMm - DIMENSION_MM,
    heightMm: frame.heightMm - DIMENSION_MM,
  };
}

/** What scale the map is drawn at, and whether that is what was asked for. null: there is nothing to draw, or no scale will do. */
export function mapScale(
  view: PlanView,
  frame: Frame,
  asked: number | null,
  units: Units,
): { readonly scale: number; readonly askedFits: boolean } | null {
  const extent = extentOf(view);
  if (!Number.isFinite(extent.minX)) return null;
  const floor: FloorExtent = {
    widthMm: extent.maxX - extent.minX,
    heightMm: extent.maxY - extent.minY,
    aroundMm: AROUND_MM,
  };
  const room: Room = inner(frame);
  if (asked !== null && fitsAt(floor, room, asked)) return { scale: asked, askedFits: true };
  const scale = largestScale(floor, room, units);
  return scale === null ? null : { scale, askedFits: asked === null };
}

function namesBeside(zone: ZoneView): { text: string; px: number; weight: 600 | 800 }[] {
  const px = LETTERS.paper.tag;
  const profile = zone.held ? paperWords.stop : (cspOf(zone.zone) ?? '');
  return [
    ...(zone.zone.name ? [{ text: zone.zone.name, px, weight: 600 as const }] : []),
    ...(profile === '' ? [] : [{ text: profile, px: px * 1.3, weight: 800 as const }]),
  ];
}

function showing(input: ZoneMapInput, frame: Frame, at: Point, floorAt: Point): Showing {
  const run = (widthMm: number): string => tapeText(widthMm, input.units);
  const left = Math.max(frame.x, floorAt[0] - BEFORE_DIMENSION_MM);
  const top = Math.max(frame.y, floorAt[1] - BEFORE_DIMENSION_MM);
  return {
    ...SHOW_ALL,
    reach: 'spots',
    tagsOf: ON_PAPER,
    within: {
      minX: (left - at[0]) / PAPER_MM_PER_PX,
      minY: (top - at[1]) / PAPER_MM_PER_PX,
      maxX: (frame.x + frame.widthMm - at[0]) / PAPER_MM_PER_PX,
      maxY: (frame.y + frame.heightMm - at[1]) / PAPER_MM_PER_PX,
    },
    zoneNames: namesBeside,
    doorText: ({ tag, kind, widthMm }) => {
      if (kind === 'stop') return paperWords.stopLine(tag, run(widthMm));
      return kind === 'opening' ? paperWords.clear(tag, run(widthMm)) : tag;
    },
  };
}

/** Two lengths this near, mm, are one number on paper. */
const SAME_MM = 1;

/** The whole floor's width and depth, measured on the sheet's two free sides; not again what somebody has drawn. */
function overall(view: PlanView, look: Look): Prim[] {
  const { minX, minY, maxX, maxY } = extentOf(view);
  const drawn = (from: Point, to: Point): boolean =>
    view.dimensions.some((one) => {
      const run = minus(one.to, one.from);
      const side = minus(to, from);
      return (
        Math.abs(Math.abs(dot(run, unit(side))) - lengthOf(side)) < SAME_MM &&
        Math.abs(cross(run, unit(side))) < SAME_MM
      );
    });
  const line = (from: Point, to: Point, lengthMm: number): Prim[] => {
    if (drawn(from, to)) return [];
    return dimensionPrims(
      { from, to, offsetMm: 0, offsetPx: DIMENSION_OUT_PX, text: view.lengthText(lengthMm), halo: 'ground' },
      look,
    );
  };
  return [...line([minX, minY], [maxX, minY], maxX - minX), ...line([minX, maxY], [minX, minY], maxY - minY)];
}

/** The floor at true scale in the middle of its frame: the same prims as on the screen. */
export function drawMap(
  input: ZoneMapInput,
  view: PlanView,
  frame: Frame,
  scale: number,
): { readonly svg: string; readonly paper: OnPaper } {
  const extent = extentOf(view);
  const room = inner(frame);
  const width = (extent.maxX - extent.minX) / scale;
  const height = (extent.maxY - extent.minY) / scale;
  const at: Point = [
    room.x + (room.widthMm - width) / 2 - extent.minX / scale,
    room.y + (room.heightMm - height) / 2 - extent.minY / scale,
  ];
  const paper: OnPaper = { scale, at };
  const look: Look = { pxPerMm: paperPxPerMm(scale), picked: false, print: true };
  const floorAt: Point = [at[0] + extent.minX / scale, at[1] + extent.minY / scale];
  const floor = paintFloor(view, look, showing(input, frame, at, floorAt));
  const classes = PAINT_ORDER.filter((name) => name !== 'page' && name !== 'picked').map((name) => {
    const prims = floor[name].flatMap((work) => work.prims);
    return `<g data-class="${name}">${prims.map((prim) => primSvg(prim, paper)).join('')}</g>`;
  });
  const sizes = overall(view, look)
    .map((prim) => primSvg(prim, paper))
    .join('');
  const clip = `<clipPath id="map">${box(frame.x, frame.y, frame.widthMm, frame.heightMm)}</clipPath>`;
  const svg = `<defs>${clip}</defs><g clip-path="url(#map)" data-map-scale="${mm(scale)}">${sizes}${classes.join('')}</g>`;
  return { svg, paper };
}
