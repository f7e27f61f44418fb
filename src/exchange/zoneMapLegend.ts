import type { Point } from '../geometry/floorShape.ts';
import { paintCrack, isHairline } from '../canvas/paint/crack.ts';
import { paintJoint } from '../canvas/paint/joint.ts';
import type { Look, Prim, Texture } from '../canvas/paint/prim.ts';
import { northArrow, scaleBar } from '../canvas/paint/scaleBar.ts';
import { LINE } from '../canvas/look.ts';
import { followerTexture } from '../canvas/paint/reach.ts';
import { paintOutOfScope } from '../canvas/paint/outOfScope.ts';
import { EDGE_LOOKS, edgeLook, UPSTAND_PX } from '../canvas/paint/slab.ts';
import type { PlanView } from '../canvas/paint/view.ts';
import type { Held } from '../model/doc.ts';
import { textWidth, wrapText } from '../canvas/paint/textWidth.ts';
import { paperWords } from '../words/paperWords.ts';
import { paperPxPerMm, primSvg, type OnPaper } from './primsSvg.ts';
import { hatchSvg } from './hatchSvg.ts';
import { box, letters, pathData } from './svg.ts';
import type { Frame } from './zoneMapDrawing.ts';
import type { ZoneMapInput } from './zoneMapInput.ts';

const LOOK: Look = { pxPerMm: paperPxPerMm(1), picked: false, print: true };
const SAMPLE_MM = 10.5;
const SAMPLE_GAP_MM = 2.2;

/** A sample is drawn by the painter of its kind, at 1 : 1: one floor millimetre is one of paper. */
type Sample = { readonly words: string; readonly prims: readonly Prim[] };

const ZIGZAG: readonly Point[] = [
  [0, 1.4],
  [4, -1.2],
  [7.5, 1.2],
  [SAMPLE_MM, -1.2],
];
const LEVEL: readonly Point[] = [
  [0, 0],
  [SAMPLE_MM, 0],
];
const PATCH: readonly Point[] = [
  [0, -1.8],
  [SAMPLE_MM, -1.8],
  [SAMPLE_MM, 1.8],
  [0, 1.8],
];

function crackSample(behaviour: Held<'crack'>['behaviour'], widthMm: number, words: string): Sample {
  const crack: Held<'crack'> = {
    id: 'crack:sample',
    floor: 'floor:sample',
    tag: '',
    path: ZIGZAG,
    behaviour,
    widthMm,
    depthMm: null,
  };
  return { words, prims: paintCrack(crack, undefined, LOOK) };
}

function jointSample(kind: Held<'joint'>['kind'], words: string): Sample {
  const joint: Held<'joint'> = {
    id: 'joint:sample',
    floor: 'floor:sample',
    tag: '',
    path: LEVEL,
    kind,
    treat: 'carried',
  };
  return { words, prims: paintJoint(joint, undefined, LOOK) };
}

function edgeSample(kind: keyof typeof EDGE_LOOKS, words: string): Sample {
  return { words, prims: [{ kind: 'line', path: LEVEL, ...EDGE_LOOKS[kind] }] };
}

function patchSample(texture: Texture, words: string): Sample {
  const region = [[PATCH]];
  return {
    words,
    prims: [
      { kind: 'area', region, fill: null, texture },
      { kind: 'line', path: PATCH, closed: true, ink: 'ink', px: 1.5 },
    ],
  };
}

function outOfScopeSample(words: string): Sample {
  const area: Held<'outOfScope'> = { id: 'outOfScope:sample', floor: 'floor:sample', tag: '', ring: PATCH };
  return { words, prims: paintOutOfScope(area, undefined, LOOK) };
}

/** A wall with the thin line that runs along it on the floor's side. */
function upstandSample(words: string): Sample {
  const thin: Prim = { kind: 'line', path: LEVEL, ink: 'ink', px: UPSTAND_PX, shiftPx: -LINE.wall };
  return { words, prims: [{ kind: 'line', path: LEVEL, ...EDGE_LOOKS.wall }, thin] };
}

function solidSample(words: string): Sample {
  return { words, prims: [{ kind: 'area', region: [[PATCH]], fill: 'ink' }] };
}

/** Bars for the second machine, the third and all after it, as far as there are fields of them. */
function followerSamples(view: PlanView): Sample[] {
  const places = (view.measure?.zones ?? []).flatMap((zone) =>
    (zone.fields ?? []).flatMap(({ areaM2 }, place) => (place > 0 && areaM2 > 0 ? [Math.min(place, 3)] : [])),
  );
  return paperWords.lines.followers.flatMap((words, i) =>
    places.includes(i + 1) ? [patchSample(followerTexture(i + 1), words)] : [],
  );
}

/** Only what is on this map. */
function samplesOf(view: PlanView): Sample[] {
  const words = paperWords.lines;
  const edges = new Set(view.slabs.flatMap((slab) => slab.outline.map(({ edge }) => edgeLook(edge))));
  const cracks = (wanted: (crack: Held<'crack'>) => boolean): boolean => view.cracks.some(wanted);
  const joints = new Set(view.joints.map(({ kind }) => kind));
  const tight = view.measure?.zones.flatMap((zone) => zone.tight) ?? [];
  const plain = (crack: Held<'crack'>): boolean =>
    !isHairline(crack) && crack.behaviour !== 'working' && crack.behaviour !== 'structural';
  return [
    ...(cracks(plain) ? [crackSample('static', 1, words.static)] : []),
    ...(cracks(isHairline) ? [crackSample('static', 0.1, words.hairline)] : []),
    ...(cracks(({ behaviour }) => behaviour === 'working') ? [crackSample('working', 1, words.working)] : []),
    ...(cracks(({ behaviour }) => behaviour === 'structural') ? [crackSample('structural', 1, words.structural)] : []),
    ...(joints.has('control') ? [jointSample('control', words.control)] : []),
    ...(joints.has('construction') ? [jointSample('construction', words.construction)] : []),
    ...(joints.has('isolation') ? [jointSample('isolation', words.isolation)] : []),
    ...(edges.has('stop') ? [edgeSample('stop', words.stop)] : []),
    ...(edges.has('run') ? [edgeSample('run', words.run)] : []),
    ...(edges.has('drop') ? [edgeSample('drop', words.drop)] : []),
    ...(view.slabs.some((slab) => slab.outline.some(({ edge }) => edge.upstand)) ? [upstandSample(words.upstand)] : []),
    ...followerSamples(view),
    ...(tight.some(({ kind }) => kind === 'gap') ? [solidSample(words.hand)] : []),
    ...(tight.some(({ kind }) => kind === 'cutOff') ? [patchSample('slant', words.cutOff)] : []),
    ...(view.outOfScope.length > 0 ? [outOfScopeSample(words.outOfScope)] : []),
    ...(view.zones.some(({ held }) => held) ? [patchSample('crosses', words.keepOut)] : []),
  ];
}

const SWATCH = { width: 10.4, height: 9.5, gap: 0.8 } as const;
const SMALL = 2.6;

function swatches(view: PlanView, x: number, y: number): string {
  const used = new Set(view.zones.flatMap((zone) => (zone.csp === null || zone.held ? [] : [Math.round(zone.csp)])));
  return Array.from({ length: 10 }, (_, i) => {
    const left = x + i * (SWATCH.width + SWATCH.gap);
    const framed = used.has(i + 1);
    const outline: readonly Point[] = [
      [left, y],
      [left + SWATCH.width, y],
      [left + SWATCH.width, y + SWATCH.height],
      [left, y + SWATCH.height],
    ];
    return (
      hatchSvg(pathData(outline, true), outline, i + 1, [left, y]) +
      box(left, y, SWATCH.width, SWATCH.height, { line: framed ? 0.8 : 0.25 }) +
      letters(String(i + 1), {
        x: left + SWATCH.width / 2,
        y: y + SWATCH.height + 3.4,
        size: 3,
        weight: framed ? 800 : 500,
        anchor: 'middle',
      })
    );
  }).join('');
}

/** Samples stand in rows so far apart, mm. */
const SAMPLE_ROW_MM = 5.4;

/** Profiles and scale bar above the first row of samples, mm. */
const SAMPLES_FROM_MM = 26.2;
const UNDER_SAMPLES_MM = 3;

interface PlacedSample extends Sample {
  readonly left: number;
  readonly row: number;
}

/** Samples in rows no wider than `width`, mm, from 0. */
function inRows(samples: readonly Sample[], width: number): PlacedSample[] {
  let left = 0;
  let row = 0;
  return samples.map((sample) => {
    const room = SAMPLE_MM + SAMPLE_GAP_MM + textWidth(sample.words, SMALL) + 4;
    if (left > 0 && left + room > width) {
      left = 0;
      row += 1;
    }
    const place = { ...sample, left, row };
    left += room;
    return place;
  });
}

/** Height of the block under the map, mm: as many rows of samples as its floor needs. */
export function legendHeight(view: PlanView, widthMm: number): number {
  const last = inRows(samplesOf(view), widthMm).at(-1)?.row ?? 0;
  return SAMPLES_FROM_MM + last * SAMPLE_ROW_MM + UNDER_SAMPLES_MM;
}

function lineSamples(view: PlanView, x: number, y: number, width: number): string {
  return inRows(samplesOf(view), width)
    .map(({ words, prims, left, row }) => {
      const top = y + row * SAMPLE_ROW_MM;
      const paper: OnPaper = { scale: 1, at: [x + left, top] };
      return (
        prims.map((prim) => primSvg(prim, paper)).join('') +
        letters(words, { x: x + left + SAMPLE_MM + SAMPLE_GAP_MM, y: top + 0.9, size: SMALL, weight: 600 })
      );
    })
    .join('');
}

/** The block under the map: profiles, lines, scale bar, north. */
export function drawLegend(input: ZoneMapInput, view: PlanView, frame: Frame, paper: OnPaper): string {
  const { x, y, widthMm } = frame;
  const right = x + 10 * (SWATCH.width + SWATCH.gap) + 6;
  const glass: OnPaper = { scale: 1, at: [0, 0] };
  // The bar is as long as its length on the floor at this scale; its letters are the paper's.
  const room = (x + widthMm - right - 14) / 0.26;
  const bar = scaleBar([right, y + 9.5], paperPxPerMm(paper.scale), room, input.units, 11);
  const north = view.floor?.northDeg === undefined ? [] : northArrow([x + widthMm - 5, y + 5], view.floor.northDeg, 11);
  return [
    letters(paperWords.profile, { x, y: y + 2.6, size: 3, weight: 800 }),
    swatches(view, x, y + 4.5),
    letters(paperWords.profileHelp, { x, y: y + 21.4, size: SMALL }),
    ...[...bar, ...north].map((prim) => primSvg(prim, glass)),
    letters(paperWords.scaleOn(paper.scale, paperWords.sheets[input.sheet]), {
      x: right,
      y: y + 16,
      size: 3,
      weight: 800,
    }),
    ...wrapText(paperWords.printAt, 2.3, x + widthMm - right).map((line, i) =>
      letters(line, { x: right, y: y + 19.4 + i * 3, size: 2.3 }),
    ),
    lineSamples(view, x, y + SAMPLES_FROM_MM, widthMm),
  ].join('');
}
