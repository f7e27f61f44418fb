import type { Json, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Fields } from '../model/doc.ts';
import { isRecordType, schemas } from '../model/records/all.ts';

/**
 * A record without anything that its schema does not name, at any depth. Records are loose on purpose, so a newer app
 * may have put a price where we do not look for one; what leaves with the crew is only what we know.
 */
interface Def {
  readonly type: string;
  readonly shape?: { readonly [slot: string]: Schema };
  readonly innerType?: Schema;
  readonly element?: Schema;
  readonly items?: readonly Schema[];
  readonly options?: readonly Schema[];
}
interface Schema {
  readonly _zod: { readonly def: Def };
  safeParse(value: unknown): { readonly success: boolean };
}

/** A value that fits no shape has no place in a copy: it may hold anything. */
const NOTHING = undefined;

function isObject(value: Json): value is { readonly [key: string]: Json } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function knownShape(shape: { readonly [slot: string]: Schema }, value: Json): Json | undefined {
  if (!isObject(value)) return NOTHING;
  const known: [string, Json][] = [];
  for (const [slot, inner] of Object.entries(value)) {
    const schema = Object.hasOwn(shape, slot) ? shape[slot] : undefined;
    const kept = schema ? knownValue(schema, inner) : NOTHING;
    if (kept !== undefined) known.push([slot, kept]);
  }
  return Object.fromEntries(known);
}

function knownList(value: Json, schemaAt: (index: number) => Schema | undefined): Json | undefined {
  if (!Array.isArray(value)) return NOTHING;
  const list: readonly Json[] = value;
  return list.map((item, index) => {
    const schema = schemaAt(index);
    return (schema ? knownValue(schema, item) : NOTHING) ?? null;
  });
}

function knownValue(schema: Schema, value: Json): Json | undefined {
  const { def } = schema._zod;
  if (def.innerType) return value === null && def.type === 'nullable' ? null : knownValue(def.innerType, value);
  if (def.shape) return knownShape(def.shape, value);
  if (def.options) {
    const option = def.options.find((one) => one.safeParse(value).success);
    return option ? knownValue(option, value) : NOTHING;
  }
  if (def.element) return knownList(value, () => def.element);
  if (def.items) return knownList(value, (index) => def.items?.[index]);
  return typeof value === 'object' && value !== null ? NOTHING : value;
}

/** The fields of a record that its schema names; null for a kind of record that we do not know. */
export function knownFields(id: RecordId, fields: Fields): Fields | null {
  const type = typeOf(id);
  if (!isRecordType(type)) return null;
  const plain = Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Json;
  return (knownValue(schemas[type], plain) ?? null) as Fields | null;
}
