import type { RecordId } from '../../model/cell.ts';

/** Code of a rate that one machine of the fleet has for itself, in a method. */
export function machineRateCode(machine: string, method: string): string {
  return `${TABLE}/${machine.slice(machine.indexOf(':') + 1)}/${method}`;
}

const TABLE = 'machine';

/** Machine and method of such a code; null for any other. */
export function machineOfCode(code: string): { readonly machine: RecordId; readonly method: string } | null {
  const [table, machine, method, more] = code.split('/');
  if (table !== TABLE || !machine || !method || more !== undefined) return null;
  return { machine: `machine:${machine}`, method };
}
