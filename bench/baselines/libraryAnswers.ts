import { type FloorShape, type MachineShape, type Point, REST, type Ring } from '../../src/geometry/floorShape.ts';
import { pathLength } from '../../src/geometry/polyline.ts';
import { type FloorParts, type Library, filled, floorParts } from '../../tests/support/oracles/floorModel.ts';
import type { Box, PlaneSets } from '../../tests/support/oracles/planeSets.ts';
import { type Answers, type ZoneAnswers, noAnswers } from '../engineAnswers.ts';
import { type Boxed, boxOfPoints, boxed, boxesMeet, itemsIn } from './boxed.ts';

/*
 * The work of our engine done with a library: net, field and strip of each zone, and of each finding and crack
 * in each zone how much lies on them. Whole: the plan at once. Tiled: square by square with a margin, so
 * that no operation is large; then no way in is looked for, which favours the library.
 */
export function wholeAnswers<S>(shape: FloorShape, library: Library<S>): Answers {
  const answers = noAnswers();
  try {
    const all = boxOfPoints(shape.slabs.flatMap((slab) => slab.ring));
    addParts(answers, floorParts(shape, library), all, itemsOf(shape), library.sets);
  } finally {
    library.sets.release();
  }
  return answers;
}

export function tiledAnswers<S>(shape: FloorShape, library: Library<S>, tileMm: number): Answers {
  const answers = noAnswers();
  const { sets } = library;
  const machine = shape.machines[0] as MachineShape;
  const reachMm = 2 * machine.headRadiusMm + machine.clearanceMm.wall;
  const items = itemsOf(shape);
  const [solids, walls] = [boxed(shape.solids, (one) => one.ring), boxed(shape.walls, (one) => one.body)];
  const all = boxOfPoints(shape.slabs.flatMap((slab) => slab.ring));
  for (let minX = all.minX; minX < all.maxX; minX += tileMm) {
    for (let minY = all.minY; minY < all.maxY; minY += tileMm) {
      const tile: Box = { minX, minY, maxX: minX + tileMm, maxY: minY + tileMm };
      // All that can be felt inside the tile. The slab stays whole: it has few corners.
      const around = grownBy(tile, reachMm + 10);
      const near = {
        ...shape,
        solids: itemsIn(solids, around),
        walls: itemsIn(walls, around),
        entrances: [],
      };
      try {
        const parts = floorParts(near, library);
        addParts(answers, windowed(parts, tile, sets), tile, items, sets);
      } finally {
        sets.release();
      }
    }
  }
  return answers;
}

interface Items {
  readonly zones: readonly Boxed<FloorShape['zones'][number]>[];
  readonly findings: readonly Boxed<FloorShape['findings'][number]>[];
  readonly lines: readonly Boxed<FloorShape['lines'][number]>[];
}

function itemsOf(shape: FloorShape): Items {
  return {
    zones: boxed(shape.zones, (zone) => zone.ring),
    findings: boxed(shape.findings, (finding) => finding.ring),
    lines: boxed(shape.lines, (line) => line.path),
  };
}

function windowed<S>(parts: FloorParts<S>, box: Box, sets: PlaneSets<S>): FloorParts<S> {
  const cut = (part: S): S => sets.window(part, box);
  return { net: cut(parts.net), raw: cut(parts.raw), band: cut(parts.band), field: cut(parts.field) };
}

interface ZoneParts<S> {
  readonly id: string;
  readonly box: Box;
  readonly net: S;
  readonly field: S;
  readonly strip: S;
}

function addParts<S>(answers: Answers, parts: FloorParts<S>, box: Box, items: Items, sets: PlaneSets<S>): void {
  const zones = zoneParts(parts, box, itemsIn(items.zones, box), sets);
  for (const zone of zones) {
    const sum = answers.zone(zone.id);
    sum.netM2 += sets.areaMm2(zone.net) / 1e6;
    sum.fieldM2 += sets.areaMm2(zone.field) / 1e6;
    sum.stripM2 += sets.areaMm2(zone.strip) / 1e6;
    for (const { item, box: itemBox } of items.findings) {
      if (boxesMeet(itemBox, zone.box) && boxesMeet(itemBox, box)) addFinding(sum, zone, item.ring, itemBox, sets);
    }
    for (const { item, box: itemBox } of items.lines) {
      if (boxesMeet(itemBox, zone.box) && boxesMeet(itemBox, box)) addLine(sum, zone, item.path, itemBox, sets);
    }
  }
}

function addFinding<S>(sum: ZoneAnswers, zone: ZoneParts<S>, ring: Ring, box: Box, sets: PlaneSets<S>): void {
  const finding = filled([{ ring }], sets);
  const areaM2 = (part: S): number => {
    const [near, share] = partIn(part, box, sets);
    if (share === 'none') return 0;
    return sets.areaMm2(share === 'all' ? finding : sets.intersect(near, finding)) / 1e6;
  };
  sum.findingNetM2 += areaM2(zone.net);
  sum.findingFieldM2 += areaM2(zone.field);
  sum.findingStripM2 += areaM2(zone.strip);
}

function addLine<S>(sum: ZoneAnswers, zone: ZoneParts<S>, path: readonly Point[], box: Box, sets: PlaneSets<S>): void {
  const lengthM = (part: S): number => {
    const [near, share] = partIn(part, grownBy(box, 1), sets);
    if (share === 'none') return 0;
    return (share === 'all' ? pathLength(path) : sets.lengthMm(path, near)) / 1000;
  };
  sum.lineNetM += lengthM(zone.net);
  sum.lineFieldM += lengthM(zone.field);
  sum.lineStripM += lengthM(zone.strip);
}

/** What of a part lies in the box of an item, and whether that is all of the box or nothing: then no overlay is needed. */
function partIn<S>(part: S, box: Box, sets: PlaneSets<S>): readonly [near: S, share: 'all' | 'some' | 'none'] {
  const near = sets.window(part, box);
  const areaMm2 = sets.areaMm2(near);
  const boxMm2 = (box.maxX - box.minX) * (box.maxY - box.minY);
  if (areaMm2 === 0) return [near, 'none'];
  return [near, Math.abs(areaMm2 - boxMm2) < 1e-9 * boxMm2 ? 'all' : 'some'];
}

/** Later zones lie on top; the rest is what none covers. */
function zoneParts<S>(
  parts: FloorParts<S>,
  box: Box,
  zones: FloorShape['zones'],
  sets: PlaneSets<S>,
): readonly ZoneParts<S>[] {
  const whole = zones.map((zone) => sets.window(filled([zone], sets), box));
  const boxes = zones.map((zone) => boxOfPoints(zone.ring));
  const named = zones.map(({ id }, i) => {
    const zoneBox = boxes[i] as Box;
    const above = whole.filter((_, j) => j > i && boxesMeet(zoneBox, boxes[j] as Box));
    const seen = above.length > 0 ? sets.subtract(whole[i] as S, sets.union(above)) : (whole[i] as S);
    const within = (part: S): S => sets.intersect(sets.window(part, zoneBox), seen);
    return { id, box: zoneBox, net: within(parts.net), field: within(parts.field), strip: within(parts.band) };
  });
  const covered = sets.union(whole);
  const left = (part: S): S => (zones.length > 0 ? sets.subtract(part, covered) : part);
  return [...named, { id: REST, box, net: left(parts.net), field: left(parts.field), strip: left(parts.band) }];
}

function grownBy({ minX, minY, maxX, maxY }: Box, by: number): Box {
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
}
