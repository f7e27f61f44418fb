import type { RecordId } from '../model/cell.ts';
import { recordsOf, type Doc, type Held } from '../model/doc.ts';
import type { CostInputs } from './costInputs.ts';
import { jobHours } from './jobHours.ts';
import type { Line } from './line.ts';
import { pricedWork } from './pricedWork.ts';
import { rateBook, type PricedAmount, type RateBook } from './rates/rateBook.ts';
import { floorTakeoff, type FloorTakeoff } from './takeoff.ts';
import type { ToPrice } from './workLines.ts';

/** One zone of the job with its share of the price. */
export interface PricedZone {
  readonly floor: RecordId;
  readonly zone: Line['zone'];
  readonly areaM2: number;
  readonly share: Line;
}

/** What the whole job costs, over all its floors. */
export interface JobPrice {
  readonly book: RateBook;
  /** Lines of all floors; with several floors their keys end in the id of the floor. */
  readonly work: readonly Line[];
  /** Money of the whole job: costs, price, shares, extras. */
  readonly money: readonly Line[];
  readonly zones: readonly PricedZone[];
  /** Codes of why it is no offer, over all floors. */
  readonly notAnOffer: readonly string[];
  readonly missingPrices: readonly string[];
  readonly notices: readonly string[];
  /** Prices that were asked for on the way. */
  readonly askedPrices: readonly PricedAmount[];
  /** Floors on which nothing is drawn: they are not in the price. */
  readonly leftOut: readonly Held<'floor'>[];
}

interface OfFloor extends FloorTakeoff {
  readonly floor: Held<'floor'>;
}

/**
 * The price of a job: that of its one floor, or one price over all floors with one mobilisation, machines for the days
 * of the job, and set-up, tear-down and travel shared as far as floors are worked on one visit. Floors with nothing on
 * them are left out and named; a page that is not trued keeps the whole from being an offer. Whole minor units.
 */
export function jobPrice(doc: Doc): JobPrice {
  const all = recordsOf(doc, 'floor').map((floor): OfFloor => ({ floor, ...floorTakeoff(doc, floor.id) }));
  const drawn = all.filter(({ takeoff }) => takeoff.blocked !== 'noSlab');
  const floors = drawn.length > 0 ? drawn : all;
  const parts = floors.map((each) => (floors.length > 1 ? onItsOwn(each) : each));
  const book = rateBook(doc);
  const asked = new Map<string, PricedAmount>();
  const priced = pricedFloors(doc, watched(book, asked), parts);
  const codes = (of: (floor: OfFloor) => readonly string[]): string[] => [...new Set(floors.flatMap(of))];
  return {
    book,
    work: [...parts.flatMap(({ takeoff }) => takeoff.lines.filter((line) => line.trade !== 'money')), ...priced.hours],
    money: priced.money,
    zones: priced.zones,
    notAnOffer: codes(({ takeoff }) => takeoff.notAnOffer),
    missingPrices: [...new Set([...priced.missing, ...codes(({ takeoff }) => takeoff.missingPrices)])],
    notices: codes(({ takeoff }) => takeoff.notices),
    askedPrices: [...asked.values()],
    leftOut: all.filter((each) => !floors.includes(each)).map(({ floor }) => floor),
  };
}

/** The same book, which notes the prices that it is asked for. */
function watched(book: RateBook, asked: Map<string, PricedAmount>): RateBook {
  return {
    ...book,
    price(code) {
      const price = book.price(code);
      if (price) asked.set(code, price);
      return price;
    },
  };
}

interface Priced {
  readonly money: readonly Line[];
  readonly hours: readonly Line[];
  readonly zones: readonly PricedZone[];
  readonly missing: readonly string[];
}

function pricedFloors(doc: Doc, book: RateBook, floors: readonly OfFloor[]): Priced {
  const priced = floors.flatMap(({ floor, toPrice, takeoff }) => (toPrice ? [{ floor, toPrice, takeoff }] : []));
  const [first] = priced;
  if (!first) return { money: [], hours: [], zones: [], missing: [] };
  const inputs = priced.length === 1 ? first.toPrice.inputs : joined(book, priced);
  const work = pricedWork(
    { doc, book },
    inputs,
    priced.flatMap(({ toPrice }) => toPrice.zoneTotals),
  );
  const owners = priced.flatMap(({ floor, toPrice, takeoff }) =>
    toPrice.zoneTotals.map(({ zone }) => ({ floor: floor.id, zone, areaM2: netM2(takeoff.lines, zone) })),
  );
  const shares = work.lines.filter(({ code }) => code === 'money.priceShare');
  const zones = owners.flatMap((owner, i): PricedZone[] => {
    const share = shares[i];
    return share ? [{ ...owner, share: priced.length === 1 ? share : keyed(share, owner.floor) }] : [];
  });
  return {
    money: [...work.lines.filter((line) => !shares.includes(line)), ...zones.map(({ share }) => share)],
    hours: priced.length === 1 ? [] : [inputs.days, inputs.crewHours],
    zones,
    missing: work.missingPrices,
  };
}

function netM2(lines: readonly Line[], zone: Line['zone']): number {
  return lines.find((line) => line.code === 'netFloor' && line.zone === zone)?.quantity.likely ?? 0;
}

function joined(book: RateBook, floors: readonly { readonly toPrice: ToPrice }[]): CostInputs {
  const all = floors.map(({ toPrice }) => toPrice.inputs);
  const { crewHours, days } = jobHours(
    book,
    all.map((each) => ({ crewHours: each.crewHours, days: each.days, lines: each.onSite })),
  );
  return {
    crewHours,
    days,
    onSite: [],
    atNight: all.flatMap(({ atNight }) => atNight),
    hours: all.flatMap(({ hours }) => hours),
    material: all.flatMap(({ material }) => material),
    quantities: all.flatMap(({ quantities }) => quantities),
    zones: all.flatMap(({ zones }) => zones),
  };
}

/** Lines of one floor among those of others: each key ends in the floor, and terms that lead to them do too. */
function onItsOwn({ floor, takeoff, toPrice }: OfFloor): OfFloor {
  const keys = new Set(takeoff.lines.map(({ key }) => key));
  const own = (line: Line): Line => {
    const terms = line.working.terms.map((term) =>
      term.from !== null && keys.has(term.from) ? { ...term, from: keyWith(term.from, floor.id) } : term,
    );
    return { ...keyed(line, floor.id), working: { ...line.working, terms } };
  };
  return {
    floor,
    takeoff: { ...takeoff, lines: takeoff.lines.map(own) },
    toPrice: toPrice && {
      zoneTotals: toPrice.zoneTotals.map(own),
      inputs: {
        ...toPrice.inputs,
        crewHours: own(toPrice.inputs.crewHours),
        days: own(toPrice.inputs.days),
        onSite: toPrice.inputs.onSite.map(own),
        atNight: toPrice.inputs.atNight.map(own),
        hours: toPrice.inputs.hours.map(own),
        material: toPrice.inputs.material.map(own),
        quantities: toPrice.inputs.quantities.map(own),
      },
    },
  };
}

function keyWith(key: string, floor: RecordId): string {
  return `${key}|${floor}`;
}

function keyed(line: Line, floor: RecordId): Line {
  return { ...line, key: keyWith(line.key, floor) };
}
