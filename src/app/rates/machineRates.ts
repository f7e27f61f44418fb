import { recordsOf, type Doc } from '../../model/doc.ts';
import { machineRateCode } from '../../takeoff/rates/machineRate.ts';
import { isHandMethod, methodOf } from '../../takeoff/rates/methods.ts';
import { rateBook, type Priced } from '../../takeoff/rates/rateBook.ts';

/** What a machine of the job works at, and the method it has that from; null: a rate of its own. */
export interface MachineRate {
  readonly rate: Priced;
  readonly method: string | null;
}

/** The machines of a job that have a field: only their hours ask for a rate of a machine. */
export function machineRates(doc: Doc): readonly MachineRate[] {
  const book = rateBook(doc);
  return recordsOf(doc, 'machine').flatMap((machine): MachineRate[] => {
    const row = methodOf(machine.method);
    if (!row || isHandMethod(row) || row.rate.unit !== 'm2/h') return [];
    const code = machineRateCode(machine.id, machine.method);
    const rate = book.methodRate(machine.method, machine.id);
    const own = rate.code === code;
    return [
      { rate: { ...rate, code, term: machine.name, record: own ? rate.record : null }, method: own ? null : row.term },
    ];
  });
}
