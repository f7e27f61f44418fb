import { add, divide, fixed, largest, multiply, number, subtract, sumOf, term, wholeUp } from './formula.ts';
import { grouped } from './grouped.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { ORDERED, type OrderedItem } from './orders.ts';
import type { Priced, RateBook } from './rates/rateBook.ts';
import { allowanceTerm, lineTerm, measured, rateTerm } from './terms.ts';

/** One line of a zone that uses something up, and which kind of it. */
export interface Use {
  readonly line: Line;
  /** Parts joined by a bar (machine, grit, bond); null where one is as good as another. */
  readonly kind: string | null;
  readonly machine: string | null;
}

/** A use of which there are no kinds. */
export function plainUse(line: Line): Use {
  return { line, kind: null, machine: null };
}

/**
 * What to buy and carry for the whole floor: packs = what all zones use / what a pack holds, up to whole ones, kind by
 * kind, and the spare ones of the item on top (`order.<item>`, in packs). Of an item with kinds each kind by itself
 * (`orderPacks.<item>`, in packs), and what stays over when the likely is used (`orderLeft.<item>`, in the unit of the
 * use). An item that nothing uses has no lines. Rule: common practice, no source.
 */
export function orderLines(book: RateBook, uses: readonly Use[]): Line[] {
  return ORDERED.flatMap((item) => {
    const own = uses.filter(({ line }) => item.usedBy.includes(line.code) && line.quantity.high > 0);
    return own.length === 0 ? [] : linesOf(book, item, own);
  });
}

function linesOf(book: RateBook, item: OrderedItem, uses: readonly Use[]): Line[] {
  const kinds = grouped(uses, ({ kind }) => kind ?? '');
  const named = [...kinds].filter(([kind]) => kind !== '');
  const parts = named.map(([kind, own]) => kindLine(book, item, kind, own));
  const plain = kinds.get('') ?? [];
  const rest = plain.length > 0 ? [packsOf(book, item, plain)] : [];
  const all = [...parts.map((line) => term(line.key)), ...rest.map(({ formula }) => formula)];
  const [first = number(0)] = all;
  const packs = all.length === 1 ? first : add(...all);
  const spare = spareOf(book, item, uses);
  const order = makeLine({
    ...whole(item, uses),
    code: item.code,
    unit: item.packUnit,
    formula: spare ? add(packs, spare.formula) : packs,
    terms: [
      ...parts.map((line) => lineTerm(line.key, line)),
      ...rest.flatMap(({ terms }) => terms),
      ...(spare?.terms ?? []),
    ],
  });
  return [...parts, order, leftLine(book, item, uses, order)];
}

/** Fillers light up the lines they go into; anything else the zones it is used in, or a hall would light up crack by crack. */
function whole({ trade, group }: OrderedItem, uses: readonly Use[]) {
  const records = uses.flatMap(({ line: { records: own, zone } }) => {
    if (group === 'fillers') return own;
    return zone === null || zone === 'rest' ? [] : [zone];
  });
  return { trade, zone: null, records } as const;
}

function kindLine(book: RateBook, item: OrderedItem, kind: string, uses: readonly Use[]): Line {
  const { formula, terms } = packsOf(book, item, uses);
  const code = `orderPacks.${item.item}`;
  return makeLine({ ...whole(item, uses), code, of: kind, unit: item.packUnit, formula, terms });
}

interface Working {
  readonly formula: Formula;
  readonly terms: readonly Term[];
}

const PACK = 'one pack';

/** Whole packs: nobody sells half a set, and a set of one grit does not stand in for another. */
function packsOf(book: RateBook, item: OrderedItem, uses: readonly Use[]): Working {
  const used = uses.map(({ line }) => lineTerm(line.key, line));
  const sum = sumOf(used.map(({ name }) => name));
  const tenth = item.spare === 'tenth' ? [allowanceTerm('spare, of what is used', book.rate('consumables/spare'))] : [];
  const more = tenth.map(({ name }) => add(number(1), divide(term(name), number(100))));
  if (item.pack === null) return { formula: wholeUp(multiply(sum, ...more)), terms: [...used, ...tenth] };
  const row = book.rate(item.pack);
  const amount = multiply(sum, ...more, number(perUnit(row)));
  return { formula: wholeUp(divide(amount, term(PACK))), terms: [...used, ...tenth, rateTerm(PACK, row)] };
}

/** Cartridges are printed in mL, what fills them is counted in L. */
function perUnit(row: Priced): number {
  return row.unit === 'mL' ? 1000 : 1;
}

const [SPARE, SPARE_EACH, MACHINES] = ['spare', 'spare for each machine', 'machines'] as const;

/** Spare ones on top of whole packs; null where there are none, or where they are a tenth of what is used. */
function spareOf(book: RateBook, { spare }: OrderedItem, uses: readonly Use[]): Working | null {
  if (spare === 'none' || spare === 'tenth') return null;
  if (spare === 'one') {
    const terms = [allowanceTerm(SPARE, book.rate('consumables/spare_tool'))];
    return { formula: wholeUp(term(SPARE)), terms };
  }
  const machines = new Set(uses.flatMap(({ machine }) => machine ?? [])).size;
  return {
    formula: wholeUp(multiply(term(MACHINES), term(SPARE_EACH))),
    terms: [
      measured(MACHINES, Math.max(1, machines), 'number'),
      allowanceTerm(SPARE_EACH, book.rate('consumables/spare_set')),
    ],
  };
}

/** How many spare ones an order line has, likely. */
export function spareIn({ working }: Line): number {
  const likely = (name: string): number => working.terms.find((each) => each.name === name)?.value.likely ?? 0;
  return Math.ceil(likely(SPARE) + likely(MACHINES) * likely(SPARE_EACH));
}

/** What stays over of what is bought for the likely case. Fixed: low and high are other jobs, bought for otherwise. */
function leftLine(book: RateBook, item: OrderedItem, uses: readonly Use[], order: Line): Line {
  const row = item.pack === null ? null : book.rate(item.pack);
  const used = uses.map(({ line }) => likelyTerm(line));
  const bought = row ? divide(multiply(term(order.key), term(PACK)), number(perUnit(row))) : term(order.key);
  return makeLine({
    trade: item.trade,
    zone: null,
    records: order.records,
    code: `orderLeft.${item.item}`,
    unit: item.unit,
    formula: largest(number(0), subtract(bought, sumOf(used.map(({ name }) => name)))),
    terms: [likelyTerm(order), ...(row ? [{ ...rateTerm(PACK, row), value: fixed(row.likely) }] : []), ...used],
  });
}

/** The likely case of another line, in all three cases. */
function likelyTerm(line: Line): Term {
  return { ...lineTerm(line.key, line), value: fixed(line.quantity.likely), source: 'arithmetic' };
}
