import { divide, largest, multiply, number, sumOf, term } from './formula.ts';
import type { CostInputs, CostSite } from './costInputs.ts';
import type { Line } from './line.ts';
import { moneyLine } from './moneyLine.ts';
import { chosen, lineTerm } from './terms.ts';
import { wageOf } from './wage.ts';

/** Labour, and what is paid on top of it at night; minor units. */
export function labourLines(site: CostSite, inputs: CostInputs): Line[] {
  return [labour(site, inputs), nightPremium(site, inputs)].filter((line): line is Line => line !== null);
}

/** Crew hours x crew x what an hour costs; a job takes at least so many crew days. */
function labour({ book }: CostSite, { crewHours }: CostInputs): Line | null {
  const { pricing, pricingRecord } = book;
  const wage = wageOf(book);
  if (!wage) return null;
  return moneyLine({
    code: 'money.labour',
    formula: multiply(
      largest(term('crew hours'), multiply(term('least crew days'), term('hours a day'))),
      term('crew'),
      wage.formula,
    ),
    terms: [
      lineTerm('crew hours', crewHours),
      chosen('least crew days', pricing.minimumCrewDays, 'days', pricingRecord),
      chosen('hours a day', pricing.hoursADay, 'h', pricingRecord),
      chosen('crew', pricing.crew, 'persons', pricingRecord),
      ...wage.terms,
    ],
  });
}

/** On the person-hours of zones that are worked at night; set-up and travel are not counted as night. */
function nightPremium({ book }: CostSite, { atNight }: CostInputs): Line | null {
  const percent = book.pricing.nightPremiumPct ?? 0;
  const wage = wageOf(book);
  if (percent === 0 || atNight.length === 0 || !wage) return null;
  const terms = atNight.map((line) => lineTerm(line.key, line));
  return moneyLine({
    code: 'money.night',
    records: atNight.flatMap((line) => line.records),
    formula: multiply(sumOf(terms.map(({ name }) => name)), wage.formula, divide(term('night premium'), number(100))),
    terms: [...terms, ...wage.terms, chosen('night premium', percent, '%', book.pricingRecord)],
  });
}
