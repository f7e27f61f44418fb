import type { RecordId } from '../model/cell.ts';
import { recordsOf, recordOf, type Doc } from '../model/doc.ts';
import { assumptionFacts } from '../takeoff/assumptionFacts.ts';
import { frozenEstimate, type FrozenEstimate } from '../takeoff/frozenEstimate.ts';
import { jobPrice, type JobPrice } from '../takeoff/jobPrice.ts';
import type { ZoneId } from '../takeoff/prep.ts';
import { requiredCsp } from '../takeoff/profile.ts';
import { restOf } from '../takeoff/restOf.ts';
import { zoneLabel } from '../takeoff/tagOf.ts';
import { usualAssumptions, usualExclusions } from '../words/assumptionWords.ts';
import { estimateText } from '../words/estimateWords.ts';
import { REST } from './takeoffRows.ts';

export interface EstimateNow {
  readonly job: JobPrice;
  /** The estimate as it would be issued now; null where there is no price. */
  readonly frozen: FrozenEstimate | null;
}

/** The price of the whole job with its words, as it would be issued now: the same on screen and at the command line. */
export function estimateNow(doc: Doc): EstimateNow {
  const job = jobPrice(doc);
  const { assumptions, exclusions } = sentencesOf(doc, job.leftOut);
  const several = new Set(job.zones.map(({ floor }) => floor)).size > 1;
  const frozen = frozenEstimate(doc, job, {
    assumptions,
    exclusions,
    zoneName(floor, zone) {
      const label = zone === null ? REST : (zoneLabel(doc, floor, zone) ?? REST);
      const name = [label, ...profileOf(doc, floor, zone)].join(', ');
      return several ? `${recordOf(doc, 'floor', floor)?.name ?? ''}, ${name}` : name;
    },
  });
  return { job, frozen };
}

/** The profile that a zone is brought to: what the customer is told we do there. Empty where none is asked for. */
function profileOf(doc: Doc, floor: RecordId, zone: ZoneId | null): string[] {
  const record = zone === null || zone === 'rest' ? restOf(doc, floor) : recordOf(doc, 'zone', zone);
  const csp = requiredCsp(record);
  return csp === null ? [] : [estimateText.profile(csp.min, csp.max)];
}

export interface Sentences {
  readonly assumptions: readonly string[];
  readonly exclusions: readonly string[];
}

/** What the price rests on and leaves out: the job's own sentences, else the usual ones. */
export function sentencesOf(doc: Doc, leftOut: readonly { readonly name: string }[] = []): Sentences {
  const facts = assumptionFacts(doc, leftOut);
  const pricing = recordsOf(doc, 'pricing')[0];
  return {
    assumptions: pricing?.assumptions ?? usualAssumptions(facts),
    exclusions: pricing?.exclusions ?? usualExclusions(facts),
  };
}
