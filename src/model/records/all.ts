import { jobSchema, type Job } from './job.ts';
import { floorSchema, type Floor } from './floor.ts';
import { pageSchema, type Page } from './page.ts';
import { slabSchema, type Slab } from './slab.ts';
import { wallSchema, type Wall } from './wall.ts';
import { openingSchema, type Opening } from './opening.ts';
import { obstructionSchema, type Obstruction } from './obstruction.ts';
import { outOfScopeSchema, type OutOfScope } from './outOfScope.ts';
import { stepsSchema, type Steps } from './steps.ts';
import { crackSchema, type Crack } from './crack.ts';
import { jointSchema, type Joint } from './joint.ts';
import { findingSchema, type Finding } from './finding.ts';
import { zoneSchema, type Zone } from './zone.ts';
import { recipeSchema, type Recipe } from './recipe.ts';
import { passSchema, type Pass } from './pass.ts';
import { phaseSchema, type Phase } from './phase.ts';
import { alternateSchema, type Alternate } from './alternate.ts';
import { entranceSchema, type Entrance } from './entrance.ts';
import { machineSchema, type Machine } from './machine.ts';
import { serviceSchema, type Service } from './service.ts';
import { rateSchema, type Rate } from './rate.ts';
import { priceSchema, type Price } from './price.ts';
import { pricingSchema, type Pricing } from './pricing.ts';
import { readingSchema, type Reading } from './reading.ts';
import { photoSchema, type Photo } from './photo.ts';
import { noteSchema, type Note } from './note.ts';
import { dimensionSchema, type Dimension } from './dimension.ts';
import { personSchema, type Person } from './person.ts';
import { tickSchema, type Tick } from './tick.ts';
import { estimateSchema, type Estimate } from './estimate.ts';
import { letterSchema, type Letter } from './letter.ts';
import type { RecordId } from '../cell.ts';
import { typeOf } from '../cell.ts';

/** Every kind of record a plan may hold, with the shape of its fields. */
export const schemas = {
  job: jobSchema,
  floor: floorSchema,
  page: pageSchema,
  slab: slabSchema,
  wall: wallSchema,
  opening: openingSchema,
  obstruction: obstructionSchema,
  outOfScope: outOfScopeSchema,
  steps: stepsSchema,
  crack: crackSchema,
  joint: jointSchema,
  finding: findingSchema,
  zone: zoneSchema,
  recipe: recipeSchema,
  pass: passSchema,
  phase: phaseSchema,
  alternate: alternateSchema,
  entrance: entranceSchema,
  machine: machineSchema,
  service: serviceSchema,
  rate: rateSchema,
  price: priceSchema,
  pricing: pricingSchema,
  reading: readingSchema,
  photo: photoSchema,
  note: noteSchema,
  dimension: dimensionSchema,
  person: personSchema,
  tick: tickSchema,
  estimate: estimateSchema,
  letter: letterSchema,
} as const;

export interface Records {
  job: Job;
  floor: Floor;
  page: Page;
  slab: Slab;
  wall: Wall;
  opening: Opening;
  obstruction: Obstruction;
  outOfScope: OutOfScope;
  steps: Steps;
  crack: Crack;
  joint: Joint;
  finding: Finding;
  zone: Zone;
  recipe: Recipe;
  pass: Pass;
  phase: Phase;
  alternate: Alternate;
  entrance: Entrance;
  machine: Machine;
  service: Service;
  rate: Rate;
  price: Price;
  pricing: Pricing;
  reading: Reading;
  photo: Photo;
  note: Note;
  dimension: Dimension;
  person: Person;
  tick: Tick;
  estimate: Estimate;
  letter: Letter;
}
export type RecordType = keyof Records;
export type RecordOf<T extends RecordType> = Records[T];

export function isRecordType(type: string): type is RecordType {
  return Object.hasOwn(schemas, type);
}

/** Null when the record parses, else a sentence that names the field. Unknown types are kept, not judged. */
export function checkRecord(id: RecordId, fields: unknown): string | null {
  const type = typeOf(id);
  if (!isRecordType(type)) return null;
  const result = schemas[type].safeParse(fields);
  if (result.success) return null;
  const issue = result.error.issues[0];
  const where = issue?.path.join('.') ?? '';
  return `${where === '' ? 'the record' : where}: ${issue?.message ?? 'not readable'}`;
}
