import { add, divide, multiply, number, sumOf, term } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { concreteFactors } from './machineHours.ts';
import { makeLine } from './makeLine.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, measured, rateTerm } from './terms.ts';

/**
 * Hours of what is done before and after the floor itself, h: goods moved, walls masked and finished floor beside the
 * zone protected, the mock-up, tests. The whole crew is at it, nothing runs beside it. Ordinary protection is in the
 * hours of set-up and is not here again. Rates: labour table, common practice, no source.
 */
export function besidesHours(site: Site, zone: ZoneWork): Line[] {
  return [goodsHours(site, zone), protectHours(site, zone), mockUpHours(site, zone), testHours(site, zone)].filter(
    (line): line is Line => line !== null && line.quantity.high > 0,
  );
}

function quantityOf(site: Site, { prep }: ZoneWork, code: string): Line | null {
  const line = site.quantities.get(`${code}|${prep.zone}`);
  return line && line.held === null ? line : null;
}

function hoursLine(
  { prep }: ZoneWork,
  code: string,
  records: Line['records'],
  formula: Formula,
  terms: readonly Term[],
): Line {
  return makeLine({ code, trade: 'hours', unit: 'h', zone: prep.zone, records, formula, terms });
}

function goodsHours(site: Site, zone: ZoneWork): Line | null {
  const goods = quantityOf(site, zone, 'goods');
  if (!goods) return null;
  return hoursLine(
    zone,
    'hours.goods',
    goods.records,
    divide(multiply(term('floor under goods'), term('minutes each m2')), number(60)),
    [
      measured('floor under goods', goods.quantity.likely, 'm2', goods.key),
      allowanceTerm('minutes each m2', site.book.rate('labour/move_goods')),
    ],
  );
}

/** Walls and openings that are masked, and the lap line to floor that an earlier visit has finished. */
function protectHours(site: Site, zone: ZoneWork): Line | null {
  const lines = [quantityOf(site, zone, 'masked'), quantityOf(site, zone, 'lapLine')].filter((line) => line !== null);
  if (lines.length === 0) return null;
  const names: Readonly<Record<string, string>> = { masked: 'walls and openings', lapLine: 'beside finished floor' };
  const terms = lines.map((line) => measured(names[line.code] ?? line.code, line.quantity.likely, 'm', line.key));
  return hoursLine(
    zone,
    'hours.protect',
    lines.flatMap((line) => line.records),
    divide(sumOf(terms.map(({ name }) => name)), term('rate')),
    [...terms, rateTerm('rate', site.book.rate('labour/protect'))],
  );
}

/** A patch with all passes of the zone, by whatever tool does them; it is worked over again with the floor. */
function mockUpHours(site: Site, zone: ZoneWork): Line | null {
  const patch = quantityOf(site, zone, 'mockUp');
  const passes = zone.prep.passes
    .map((pass, i) => ({ pass, name: `pass ${i + 1}` }))
    .filter(({ pass }) => methodOf(pass.method)?.rate.unit === 'm2/h');
  if (!patch || passes.length === 0) return null;
  const each = passes.map(({ pass, name }) => {
    const factors = concreteFactors(site, zone, pass.method).map((factor) => ({
      ...factor,
      name: `${name}, ${factor.name}`,
    }));
    return {
      formula: divide(
        term(`${name}, times over`),
        multiply(term(`${name}, rate`), ...factors.map((factor) => term(factor.name))),
      ),
      terms: [
        chosen(`${name}, times over`, pass.times, 'number', pass.record),
        rateTerm(`${name}, rate`, site.book.rate(`methods/${pass.method}`)),
        ...factors,
      ],
    };
  });
  return hoursLine(
    zone,
    'hours.mockUp',
    patch.records,
    multiply(term('mock-up'), add(...each.map(({ formula }) => formula))),
    [measured('mock-up', patch.quantity.likely, 'm2', patch.key), ...each.flatMap(({ terms }) => terms)],
  );
}

const ZONE_TESTS = [
  { code: 'tests.csp', name: 'profile comparisons', rate: 'labour/test_csp' },
  { code: 'tests.pull', name: 'pull-off tests', rate: 'labour/test_pull' },
] as const;

function testHours(site: Site, zone: ZoneWork): Line | null {
  const tests = ZONE_TESTS.flatMap((test) => {
    const line = quantityOf(site, zone, test.code);
    return line ? [{ ...test, line }] : [];
  });
  if (tests.length === 0) return null;
  const minutes = (name: string): string => `${name}, minutes each`;
  return hoursLine(
    zone,
    'hours.tests',
    tests.flatMap(({ line }) => line.records),
    divide(add(...tests.map(({ name }) => multiply(term(name), term(minutes(name))))), number(60)),
    tests.flatMap(({ name, line, rate }) => [
      measured(name, line.quantity.likely, 'number', line.key),
      allowanceTerm(minutes(name), site.book.rate(rate)),
    ]),
  );
}
