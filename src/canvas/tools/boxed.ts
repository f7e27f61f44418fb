import { boxHolds, boxesMeet, boxOf } from '../../geometry/box.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { ringContains } from '../../geometry/ring.ts';
import { crossing } from '../../geometry/segment.ts';
import type { RecordId } from '../../model/cell.ts';
import type { PlanIndex, PlanItem } from '../planIndex.ts';
import { rectangleOf } from './pathTool.ts';

/** What one selection box takes: items that lie wholly inside, and with the switch those it only touches. */
export function itemsBoxed(index: PlanIndex, from: Point, to: Point, touchingToo: boolean): readonly RecordId[] {
  const box = boxOf([from, to]);
  const frame = rectangleOf(from, to);
  return index
    .itemsIn(box)
    .filter((item) => boxHolds(box, item.box) || (touchingToo && touches(index, item, frame)))
    .map((item) => item.id);
}

function touches(index: PlanIndex, item: PlanItem, frame: readonly Point[]): boolean {
  const corner = frame[0];
  if (!corner) return false;
  if (item.shape.points.some((at) => ringContains(frame, at))) return true;
  if (item.shape.closed && ringContains(item.shape.points, corner)) return true;
  const box = boxOf(frame);
  return index
    .edgesIn(box)
    .some((edge) => edge.item === item && boxesMeet(box, boxOf([edge.a, edge.b])) && meetsFrame(edge.a, edge.b, frame));
}

function meetsFrame(a: Point, b: Point, frame: readonly Point[]): boolean {
  return frame.some((at, side) => crossing(a, b, at, frame[(side + 1) % frame.length] ?? at) !== null);
}
