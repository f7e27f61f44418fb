import type { RecordId } from '../../model/cell.ts';
import type { Held } from '../../model/doc.ts';
import { systems } from '../../takeoff/rates/systems.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** The name under which the takeoff speaks of a zone: the rest of the slab is always 'rest'. */
export function zoneKey(zone: Held<'zone'>): RecordId | 'rest' {
  return zone.covers === 'rest' ? 'rest' : zone.id;
}

/** The number on a zone's plate: its tag without the letter. */
export function zoneNumber(zone: { readonly tag: string }): string {
  return zone.tag.replace(/^Z/, '');
}

export function zoneName(zone: Held<'zone'>): string {
  if (zone.name) return zone.name;
  return zone.covers === 'rest' ? takeoffText.rest : `Zone ${zoneNumber(zone)}`;
}

/** What will be laid, by its name in the systems table; null while nothing is set. */
export function systemTerm(zone: Held<'zone'>): string | null {
  const kind = zone.system?.kind;
  if (!kind) return null;
  return systems.find((row) => row.id === kind)?.term ?? kind;
}

export function cspText(csp: { readonly min: number; readonly max: number } | null): string | null {
  if (!csp) return null;
  return csp.min === csp.max ? `CSP ${String(csp.min)}` : `CSP ${String(csp.min)} to ${String(csp.max)}`;
}
