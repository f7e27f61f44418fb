import { buildUp } from './buildUp.ts';
import type { CostSite } from './costInputs.ts';
import { add, divide, multiply, number, sumOf, term } from './formula.ts';
import { cuttingForbidden } from './holds.ts';
import { grooveVolume } from './materialLines.ts';
import type { Formula, Line, Term } from './line.ts';
import { moneyLine, priceTerm } from './moneyLine.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import { CHASE_MM } from './rates/cracks.ts';
import type { PricedAmount } from './rates/rateBook.ts';
import { PRACTICE } from './rates/rateRow.ts';
import type { ZoneWork } from './site.ts';
import { allowanceTerm, chosen, measured, rateTerm } from './terms.ts';
import { distanceFormula, distanceTerms } from './travelLines.ts';
import { wageOf } from './wage.ts';

/** One extra before its build-up: its direct cost and what that is made of. */
interface Extra {
  readonly code: `extra.${string}`;
  readonly direct: Formula;
  readonly terms: readonly Term[];
}

/**
 * Unit rates to print beside a price, minor units before tax: a metre of crack over the counted, a square metre of one
 * more coating layer, an hour of waiting, one more visit, cleaning again what stood open for over a day, an RH probe, a bag
 * of waste. From the same wage, rates and prices and through the same build-up as the price; none of them is in it. An
 * extra whose prices nobody has set is left out, and so is what cuts or drills while what lies in the slab is not
 * located. Which extras to print: common practice, no source.
 */
export function extraLines(site: CostSite, zones: readonly ZoneWork[]): Line[] {
  const cuts = cuttingForbidden(site.doc) ? [] : [crackMetre(site), probe(site)];
  const extras = [...cuts, coatingLayer(site, zones), waiting(site), visit(site), cleanAgain(site), bag(site)];
  return extras
    .filter((extra): extra is Extra => extra !== null)
    .map(({ code, direct, terms }) => {
      const built = buildUp(site.book, direct);
      return moneyLine({ code, formula: built.formula, terms: [...terms, ...built.terms] });
    });
}

const CRACK_STEPS = ['crack_chase', 'crack_clean', 'crack_fill', 'crack_trim'] as const;

/** Chased 6 x 12 mm, cleaned, filled and ground flush. Filler by its volume: half a cartridge goes on to the next. */
function crackMetre(site: CostSite): Extra | null {
  const { book } = site;
  const wage = wageOf(book);
  const filler = book.price('filler');
  if (!wage || !filler) return null;
  const rates = CRACK_STEPS.map((step) => {
    const row = book.rate(`labour/${step}`);
    return rateTerm(row.term, row);
  });
  const hours = add(...rates.map(({ name }) => divide(number(1), term(name))));
  const volume = multiply(
    grooveVolume('rectangle', 'metres', 'width', 'depth'),
    add(number(1), divide(term('waste'), number(100))),
  );
  const cartridges = divide(multiply(volume, number(1000)), term('one cartridge'));
  const mm = (name: string, value: number): Term => ({ ...measured(name, value, 'mm'), ...PRACTICE });
  return {
    code: 'extra.crackMetre',
    direct: add(multiply(hours, wage.formula), multiply(cartridges, term('filler'))),
    terms: [
      ...rates,
      ...wage.terms,
      chosen('metres', 1, 'm'),
      mm('width', CHASE_MM.width),
      mm('depth', CHASE_MM.depth),
      allowanceTerm('waste', book.rate('consumables/filler_waste')),
      rateTerm('one cartridge', book.rate('consumables/cartridge')),
      priceTerm('filler', filler),
    ],
  };
}

/** Groups of methods that take a coating off. */
const REMOVES: readonly string[] = ['scrape', 'grind', 'scarify', 'shot', 'bush', 'openBlast'];

/** One more pass of the machine that works the largest zone, with its crew and its day rate by the hour. */
function coatingLayer(site: CostSite, zones: readonly ZoneWork[]): Extra | null {
  const { book } = site;
  const wage = wageOf(book);
  const [largest] = zones.toSorted((a, b) => b.measure.netM2 - a.measure.netM2);
  const pass = largest?.prep.passes.find(({ method }) => {
    const row = methodOf(method);
    return row !== null && !isHandMethod(row) && row.rate.unit === 'm2/h' && REMOVES.includes(row.group);
  });
  const row = pass ? methodOf(pass.method) : null;
  const day = pass ? book.price(`day/${pass.method}`) : null;
  if (!wage || !pass || !row || !day) return null;
  const hour = add(multiply(term('persons'), wage.formula), divide(term('day rate'), term('hours a day')));
  return {
    code: 'extra.coatingLayer',
    direct: divide(hour, term('rate')),
    terms: [
      { ...measured('persons', row.crew, 'persons'), ...PRACTICE },
      ...wage.terms,
      priceTerm('day rate', day),
      chosen('hours a day', book.pricing.hoursADay, 'h', book.pricingRecord),
      rateTerm('rate', book.rate(`methods/${pass.method}`)),
    ],
  };
}

/** The whole crew stands. */
function waiting({ book }: CostSite): Extra | null {
  const wage = wageOf(book);
  if (!wage) return null;
  return {
    code: 'extra.waitingHour',
    direct: multiply(term('crew'), wage.formula),
    terms: [crewTerm(book), ...wage.terms],
  };
}

/** Re-mobilisation, the way there and back, set-up and tear-down. */
function visit(site: CostSite): Extra | null {
  const { book } = site;
  const wage = wageOf(book);
  const again = book.price('remobilisation');
  const distance = book.price('distance');
  if (!wage || !again || !distance) return null;
  const { travelHours = 0, travelKm = 0, vehicles = 1 } = book.pricing;
  const drives = travelKm > 0 && vehicles > 0;
  const way = multiply(term('vehicles'), distanceFormula(distance.unit), term('driving'));
  return {
    code: 'extra.visit',
    direct: add(
      term('re-mobilisation'),
      multiply(sumOf(['hours there and back', 'set-up', 'tear-down']), term('crew'), wage.formula),
      ...(drives ? [way] : []),
    ),
    terms: [
      priceTerm('re-mobilisation', again),
      chosen('hours there and back', travelHours, 'h', book.pricingRecord),
      allowanceTerm('set-up', book.rate('labour/set_up')),
      allowanceTerm('tear-down', book.rate('labour/tear_down')),
      crewTerm(book),
      ...wage.terms,
      ...(drives
        ? [
            chosen('vehicles', vehicles, 'number', book.pricingRecord),
            ...distanceTerms(site, distance.unit),
            priceTerm('driving', distance),
          ]
        : []),
    ],
  };
}

/** Vacuumed and tacked once more, when the floor was left open for over 24 h, got wet or was driven on. */
function cleanAgain({ book }: CostSite): Extra | null {
  const wage = wageOf(book);
  if (!wage) return null;
  return {
    code: 'extra.cleanAgain',
    direct: divide(wage.formula, term('final vacuum')),
    terms: [...wage.terms, rateTerm('final vacuum', book.rate('labour/final_vac'))],
  };
}

function probe({ book }: CostSite): Extra | null {
  const price = book.price('test/rh');
  return price && byMinutes(book, 'extra.probe', 'labour/test_rh', price, term('material'));
}

/** The bag, the change of it, and the tip fee of what is in it. */
function bag({ book }: CostSite): Extra | null {
  const price = book.price('bag');
  const tip = book.price('tipFee');
  if (!price || !tip) return null;
  const fee = divide(multiply(term('one bag holds'), term('tip fee')), number(1000));
  const made = byMinutes(book, 'extra.bag', 'labour/change_bag', price, add(term('material'), fee));
  if (!made) return null;
  // The fee goes by what a bag takes in, low with low.
  const holds = allowanceTerm('one bag holds', book.rate('consumables/bag_fill'));
  return { ...made, terms: [...made.terms, holds, priceTerm('tip fee', tip)] };
}

function byMinutes(
  book: CostSite['book'],
  code: Extra['code'],
  rate: string,
  price: PricedAmount,
  goods: Formula,
): Extra | null {
  const wage = wageOf(book);
  if (!wage) return null;
  return {
    code,
    direct: add(divide(multiply(term('minutes'), wage.formula), number(60)), goods),
    terms: [allowanceTerm('minutes', book.rate(rate)), ...wage.terms, priceTerm('material', price)],
  };
}

function crewTerm({ pricing, pricingRecord }: CostSite['book']): Term {
  return chosen('crew', pricing.crew, 'persons', pricingRecord);
}
