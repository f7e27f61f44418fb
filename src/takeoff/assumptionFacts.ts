import { recordOf, recordsOf, type Doc } from '../model/doc.ts';
import type { Zone } from '../model/records/zone.ts';
import type { Units } from '../model/units.ts';
import { hasCoveringDrawn } from './holds.ts';
import { jobOf } from './questions.ts';
import { rateBook } from './rates/rateBook.ts';

/** What the usual assumptions and exclusions of a job depend on. */
export interface AssumptionFacts {
  /** Hardness of all zones, each once; medium where nobody has said another. */
  readonly hardness: readonly Zone['hardness'][];
  /** Most coating layers that are drawn; 0: no coating is. */
  readonly layers: number;
  readonly units: Units;
  readonly ownPower: boolean;
  readonly visits: number;
  readonly atNight: boolean;
  readonly movesGoods: boolean;
  /** Names of floors on which nothing is drawn. */
  readonly leftOut: readonly string[];
}

/** Read off the plan and the pricing of the job. */
export function assumptionFacts(doc: Doc, leftOut: readonly { readonly name: string }[] = []): AssumptionFacts {
  const zones = recordsOf(doc, 'zone');
  const phases = new Set(zones.map((zone) => recordOf(doc, 'phase', zone.phase ?? null)?.id ?? null));
  const { pricing } = rateBook(doc);
  return {
    hardness: zones.length === 0 ? ['medium'] : [...new Set(zones.map(({ hardness }) => hardness))],
    layers: hasCoveringDrawn(doc) ? Math.max(1, ...recordsOf(doc, 'finding').map(({ layers }) => layers ?? 1)) : 0,
    units: jobOf(doc)?.units ?? 'metric',
    ownPower: pricing.power === 'generator',
    visits: Math.max(1, phases.size) + (pricing.returnVisits ?? 0),
    atNight: zones.some(({ time }) => time === 'night'),
    movesGoods: zones.some(({ goodsBy }) => goodsBy === 'us'),
    leftOut: leftOut.map(({ name }) => name),
  };
}
