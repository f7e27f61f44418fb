import type { RecordId } from './cell.ts';
import { typeOf } from './cell.ts';
import type { RecordType } from './records/all.ts';

/**
 * Which part of a job a field belongs to: a permission boundary.
 * plan: what is there and what it gets. record: what was found and done. money: nothing of it leaves with the crew.
 */
export type Part = 'plan' | 'record' | 'money';

const partOfType: Readonly<Record<RecordType, Part>> = {
  job: 'plan',
  floor: 'plan',
  page: 'plan',
  slab: 'plan',
  wall: 'plan',
  opening: 'plan',
  obstruction: 'plan',
  outOfScope: 'plan',
  steps: 'plan',
  crack: 'plan',
  joint: 'plan',
  finding: 'plan',
  zone: 'plan',
  recipe: 'plan',
  pass: 'plan',
  phase: 'plan',
  alternate: 'plan',
  entrance: 'plan',
  machine: 'plan',
  service: 'plan',
  /** Production rates in m2/h and m/h: the crew may see what a day is planned to bring. */
  rate: 'plan',
  price: 'money',
  pricing: 'money',
  estimate: 'money',
  letter: 'money',
  reading: 'record',
  photo: 'record',
  tick: 'record',
  person: 'record',
  note: 'plan',
  dimension: 'plan',
};

/** Single fields that belong elsewhere than their record. */
const partOfSlot: Readonly<Record<string, Part>> = {
  'job currency': 'money',
};

/** The part of a field. An unknown type is money: what is not known to be harmless stays home. */
export function partOf(id: RecordId, slot: string): Part {
  const type = typeOf(id);
  return partOfSlot[`${type} ${slot}`] ?? (Object.hasOwn(partOfType, type) ? partOfType[type as RecordType] : 'money');
}
