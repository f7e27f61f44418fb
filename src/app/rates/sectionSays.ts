import type { PricingEdits } from './usePricing.ts';
import { moneyForField } from '../../model/money.ts';
import { showNumber } from '../../model/showNumber.ts';
import { KM_PER_MILE } from '../../model/units.ts';
import { isByMile } from '../../takeoff/travelLines.ts';
import { moneyPage } from '../../words/moneyWords.ts';

export type Section = keyof typeof moneyPage.sections;

/** What a section of the money page holds, in a few words for its folded head. */
export function sectionSays(section: Section, { book, pricing }: PricingEdits, currency: string): string {
  const { says } = moneyPage;
  const amount = (minor: number): string => `${moneyForField(minor, currency)} ${currency}`;
  switch (section) {
    case 'wages': {
      const wage = book.price('wage');
      const crew = says.persons(short(pricing.crew), short(pricing.hoursADay));
      return wage ? `${amount(wage.amount)} ${wage.unit}, ${crew}` : crew;
    }
    case 'machines':
      return says.machines(pricing.hired?.length ?? 0);
    case 'travel': {
      const byMile = isByMile(book.price('distance')?.unit ?? '');
      const way = (pricing.travelKm ?? 0) / (byMile ? KM_PER_MILE : 1);
      return says.travel(short(pricing.travelHours ?? 0), `${short(way)} ${byMile ? 'mi' : 'km'}`);
    }
    case 'waste':
      return says.trips(pricing.haulTrips ?? 0);
    case 'site':
      return says.power(moneyPage.powers[pricing.power ?? 'site']);
    case 'business':
      return says.margin(short(pricing.marginPct));
    case 'tax': {
      const on = pricing.taxOn ?? (pricing.taxPct ? 'total' : 'none');
      return on === 'none' ? says.none : `${short(pricing.taxPct ?? 0)} %`;
    }
    case 'other':
      return pricing.otherCosts?.length ? says.costs(pricing.otherCosts.length) : says.none;
    case 'goods':
    case 'words':
      return '';
  }
}

function short(value: number): string {
  return showNumber(value, Number.isInteger(value) ? 0 : 1);
}
