import { recordId } from '../../src/model/records/base.ts';
import { schemas } from '../../src/model/records/all.ts';

/** What docs/file-format.md must say of each field: read out of the schemas themselves. */
export interface FieldShape {
  readonly slot: string;
  readonly kind: string;
  readonly optional: boolean;
}

interface Def {
  readonly type: string;
  readonly shape?: { readonly [slot: string]: Schema };
  readonly innerType?: Schema;
  readonly element?: Schema;
  readonly items?: readonly Schema[];
  readonly options?: readonly Schema[];
  readonly entries?: { readonly [name: string]: string };
  readonly values?: readonly unknown[];
}
interface Schema {
  readonly _zod: { readonly def: Def };
}

/** A kind in words: number, text, one of a list, point, path, object. */
function kindOf(schema: Schema): string {
  const { def } = schema._zod;
  if (schema === (recordId as unknown)) return 'id';
  if (def.type === 'nullable') return `${def.innerType ? kindOf(def.innerType) : ''} or null`;
  if (def.innerType) return kindOf(def.innerType);
  if (def.entries) return Object.values(def.entries).join(', ');
  if (def.values) return def.values.join(', ');
  if (def.items) return 'point';
  if (def.element) return `list of ${kindOf(def.element)}`;
  if (def.options) return def.options.map(formOf).join(' or ');
  return { string: 'text', boolean: 'yes or no', unknown: 'anything', custom: 'anything' }[def.type] ?? def.type;
}

function formOf(option: Schema): string {
  const form = option._zod.def.shape?.['form'];
  return form ? kindOf(form) : kindOf(option);
}

/** The objects inside a field, whose own fields are listed too. */
function innerShapes(schema: Schema): readonly { readonly [slot: string]: Schema }[] {
  const { def } = schema._zod;
  if (def.shape) return [def.shape];
  if (def.innerType) return innerShapes(def.innerType);
  if (def.element) return innerShapes(def.element);
  return def.options?.flatMap(innerShapes) ?? [];
}

function isOptional(schema: Schema): boolean {
  const { def } = schema._zod;
  return (
    def.type === 'optional' || (def.innerType !== undefined && def.type !== 'nullable' && isOptional(def.innerType))
  );
}

function fieldsOf(shape: { readonly [slot: string]: Schema }, before: string): FieldShape[] {
  return Object.entries(shape).flatMap(([slot, schema]) => {
    const name = `${before}${slot}`;
    const own = { slot: name, kind: kindOf(schema), optional: isOptional(schema) };
    return [own, ...innerShapes(schema).flatMap((inner) => fieldsOf(inner, `${name}.`))];
  });
}

/** Fields of every kind of record, those of nested objects by their path (`clearanceMm.wall`), each once. */
export function schemaFields(): ReadonlyMap<string, readonly FieldShape[]> {
  return new Map(
    Object.entries(schemas).map(([type, schema]) => {
      const merged = new Map<string, FieldShape>();
      for (const field of fieldsOf(schema._zod.def.shape, '')) {
        const known = merged.get(field.slot);
        // The forms of a shape share their names: `form` takes the word of each.
        const kind = known && known.kind !== field.kind ? `${known.kind}, ${field.kind}` : field.kind;
        merged.set(field.slot, { ...field, kind });
      }
      return [type, [...merged.values()]] as const;
    }),
  );
}
