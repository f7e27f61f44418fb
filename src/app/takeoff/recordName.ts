import { recordOf, type Doc } from '../../model/doc.ts';
import { isRecordId } from '../../model/id.ts';
import { passName } from '../prep/passName.ts';
import { findingRowOf } from '../../takeoff/rates/findings.ts';
import { methodOf } from '../../takeoff/rates/methods.ts';

/** The number people see on a record, the term of a method or finding, or the word as it is. */
export function recordName(part: string, doc: Doc): string {
  if (!isRecordId(part)) return methodOf(part)?.term ?? findingRowOf(part)?.term ?? part;
  const fields = doc.get(part);
  const pass = recordOf(doc, 'pass', part);
  if (pass) return passName(pass.method, pass.abrasive ?? null);
  const { name, tag } = (fields ?? {}) as { readonly name?: string; readonly tag?: string };
  return tag ?? name ?? part;
}
