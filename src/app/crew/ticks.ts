import type { RecordId } from '../../model/cell.ts';
import { recordsOf, type Doc, type Held } from '../../model/doc.ts';
import { newId, planStoreNow, run } from '../plan.ts';
import { answeredBy } from '../questions/answeredBy.ts';
import { today } from '../today.ts';

export function tickOf(doc: Doc, of: RecordId, what: string): Held<'tick'> | null {
  return recordsOf(doc, 'tick').find((tick) => tick.of === of && tick.what === what) ?? null;
}

/** Ticks a thing off or takes the tick back; who and when are kept with it. */
export function setTick(of: RecordId, what: string, done: boolean): void {
  const tick = tickOf(planStoreNow().getState(), of, what);
  const by = answeredBy();
  run('recordTick', {
    id: tick?.id ?? newId('tick'),
    of,
    what,
    done,
    on: today(),
    ...(by === '' ? {} : { by }),
    ...(tick?.actualHours === undefined ? {} : { actualHours: tick.actualHours }),
  });
}

/** Hours that a zone really took. */
export function setHours(of: RecordId, hours: number | null): void {
  const tick = tickOf(planStoreNow().getState(), of, 'hours');
  if (hours === null && tick) {
    run('setField', { id: tick.id, slot: 'actualHours', clear: true });
    return;
  }
  if (hours === null) return;
  run('recordTick', { id: tick?.id ?? newId('tick'), of, what: 'hours', done: true, on: today(), actualHours: hours });
}
