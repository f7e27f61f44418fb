import * as z from 'zod/mini';
import type { Json, RecordId } from '../cell.ts';
import { isRecordId } from '../id.ts';

/** Whatever a newer app may have written: kept, and typed as what a cell can hold. */
export const json = z.custom<Json | undefined>(() => true);

/** An object that keeps fields it does not know, so that what a newer app wrote survives a round trip. */
export function loose<T extends z.core.$ZodLooseShape>(shape: T) {
  return z.catchall(z.object(shape), json);
}

/** Field shapes that several records share. */
export const recordId = z.custom<RecordId>(isRecordId, 'not a record id');
export const finite = z.number().check(z.refine((value) => Number.isFinite(value), 'not a finite number'));
export const length = finite.check(z.gte(0));
export const lengthOver0 = finite.check(z.gt(0));
export const point = z.readonly(z.tuple([finite, finite]));
export const path = z.readonly(z.array(point).check(z.minLength(2)));
export const ring = z.readonly(z.array(point).check(z.minLength(3)));
export const text = z.string();
/** ISO 8601 date, or date and time. */
export const moment = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}(T[\d:.]+(Z|[+-]\d{2}:\d{2}))?$/));

/** Every record. `gone` instead of deleting; `order` sorts among its kind. */
export const common = {
  gone: z.optional(z.boolean()),
  /** Went along when this record was removed, and comes back with it. */
  goneWith: z.optional(recordId),
  order: z.optional(text),
};

/** Everything that lies on a floor. `tag` is the number people see (C7, F2, B3), given once, never reused. */
export const item = {
  ...common,
  floor: recordId,
  tag: text,
  name: z.optional(text),
  note: z.optional(text),
  locked: z.optional(z.boolean()),
};

/** An answer with who gave it and when. `unknown` counts as open, like no answer at all. */
export const answer = loose({
  answer: z.enum(['yes', 'no', 'unknown']),
  by: z.optional(text),
  on: z.optional(moment),
});
export type Answer = z.infer<typeof answer>;

/** A test or survey result that clears a hold: a result, a date and a person's name. */
export const clearance = loose({
  result: z.enum(['clear', 'found']),
  on: moment,
  by: text.check(z.minLength(1)),
  reference: z.optional(text),
});
export type Clearance = z.infer<typeof clearance>;

/** A vertical face that rises from the floor along an edge or round an obstruction. */
export const upstand = loose({
  kind: z.enum(['stemWall', 'kerb', 'platformSide', 'pitWall', 'coveBase']),
  heightMm: lengthOver0,
  treat: z.enum(['keep', 'remove', 'prepare']),
});
export type Upstand = z.infer<typeof upstand>;
