import { boxesMeet, boxOf, type Box } from '../geometry/box.ts';
import type { Point } from '../geometry/floorShape.ts';
import { ringArea } from '../geometry/ring.ts';
import { boxIndex } from '../geometry/spatial.ts';
import type { RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Doc, Fields } from '../model/doc.ts';
import { itemShape, type ItemShape } from '../edit/itemShape.ts';
import { homeOf } from '../edit/itemsOnFloor.ts';

/** An item of the floor as the hand meets it. */
export interface PlanItem {
  readonly id: RecordId;
  readonly shape: ItemShape;
  readonly box: Box;
  /** mm2; 0 for lines and spots. */
  readonly area: number;
}

export interface PlanEdge {
  readonly item: PlanItem;
  readonly edge: number;
  readonly a: Point;
  readonly b: Point;
}

/** Box index over one floor: asked on every move of the hand, built once a change of the plan. */
export interface PlanIndex {
  readonly items: readonly PlanItem[];
  itemsIn(box: Box): readonly PlanItem[];
  edgesIn(box: Box): readonly PlanEdge[];
}

const known = new WeakMap<Doc, Map<RecordId, PlanIndex>>();

export function planIndex(doc: Doc, floor: RecordId): PlanIndex {
  const ofDoc = known.get(doc) ?? new Map<RecordId, PlanIndex>();
  known.set(doc, ofDoc);
  const ready = ofDoc.get(floor);
  if (ready) return ready;
  const index = build(doc, floor);
  ofDoc.set(floor, index);
  return index;
}

/** A record that does not change keeps its fields object, so a change costs only what it touched. */
const kept = new WeakMap<Fields, PlanItem>();

function itemOf(doc: Doc, id: RecordId, fields: Fields): PlanItem | null {
  const ready = kept.get(fields);
  if (ready) return ready;
  const shape = itemShape(doc, id);
  if (!shape || shape.points.length === 0) return null;
  const item = { id, shape, box: boxOf(shape.points), area: shape.closed ? ringArea(shape.points) : 0 };
  // An opening lies where its wall lies: its own fields do not tell when that moves.
  if (typeOf(id) !== 'opening') kept.set(fields, item);
  return item;
}

function build(doc: Doc, floor: RecordId): PlanIndex {
  const items: PlanItem[] = [];
  for (const [id, fields] of doc) {
    if (fields['gone'] === true || homeOf(doc, id, fields) !== floor) continue;
    const item = itemOf(doc, id, fields);
    if (item) items.push(item);
  }
  const boxes = boxIndex(items.map((item) => item.box));
  const itemsIn = (box: Box): readonly PlanItem[] => boxes.meeting(box).map((number) => items[number] as PlanItem);
  return {
    items,
    itemsIn,
    // Edges are looked through item by item: an index of them all would be ten times as large, and made on each change.
    edgesIn: (box) => itemsIn(box).flatMap((item) => edgesOf(item).filter(({ a, b }) => boxesMeet(boxOf([a, b]), box))),
  };
}

const edgesKept = new WeakMap<PlanItem, readonly PlanEdge[]>();

/** The edges of an item, made when somebody first comes near it. */
function edgesOf(item: PlanItem): readonly PlanEdge[] {
  const ready = edgesKept.get(item);
  if (ready) return ready;
  const { points, closed } = item.shape;
  const last = closed ? points.length : points.length - 1;
  const edges: PlanEdge[] = [];
  for (let edge = 0; edge < last; edge++) {
    const a = points[edge];
    const b = points[(edge + 1) % points.length];
    if (a && b) edges.push({ item, edge, a, b });
  }
  edgesKept.set(item, edges);
  return edges;
}

export function boxAbout(at: Point, reachMm: number): Box {
  return { minX: at[0] - reachMm, minY: at[1] - reachMm, maxX: at[0] + reachMm, maxY: at[1] + reachMm };
}
