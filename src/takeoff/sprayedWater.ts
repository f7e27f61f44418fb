import { fixed, multiply, number, sumOf, term } from './formula.ts';
import type { Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { PRACTICE } from './rates/rateRow.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, lineTerm, measured } from './terms.ts';

/** Water that machines spray, in L, and where it goes. */
export interface SprayedWater {
  readonly water: readonly Line[];
  /** Lines of that water which leave the floor as wash water. */
  readonly toWash: readonly Line[];
  readonly slurry: readonly Line[];
}

/** What becomes of the water of a machine. Sprays of a mill leave wet fines by the square metre, a jet all its water. */
const GOES: Readonly<Record<string, 'wash' | 'slurry' | 'fines'>> = {
  low_pressure_wash: 'wash',
  water_hp: 'slurry',
  water_uhp: 'slurry',
  mill_drivable: 'fines',
};

/**
 * Water of jets and sprays in a zone: hours x 60 x L/min. Scrubbing and etching are not here: what they put on is
 * counted by the square metre. Column water of table methods, and slurry: common practice, no source.
 */
export function sprayedWater(site: Site, zone: ZoneWork, hours: readonly Line[]): SprayedWater {
  const { prep } = zone;
  const passes = prep.passes.flatMap((pass, i) => {
    const goes = GOES[pass.method];
    if (!goes) return [];
    // A machine that follows by another method takes no water.
    const sprays = prep.followers.flatMap(({ id: follower, method }) => (method === pass.method ? [follower] : []));
    const id = pass.record ?? `pass-${i + 1}`;
    const own = hours.filter(({ code, key }) => {
      const [, , of, follower] = key.split('|');
      return code === 'hours.machine' && of === id && (follower === undefined || sprays.includes(follower));
    });
    return own.length > 0 ? [{ pass, goes, id, line: waterOf(zone, pass.method, id, own) }] : [];
  });
  const slurry = passes.flatMap(({ pass, goes, id, line }): Line[] => {
    if (goes === 'wash') return [];
    const base = { code: 'slurry', of: id, trade: 'dust', unit: 'L', zone: prep.zone, records: line.records } as const;
    if (goes === 'slurry') return [makeLine({ ...base, formula: term('water'), terms: [lineTerm('water', line)] })];
    return [
      makeLine({
        ...base,
        formula: multiply(term('net floor'), term('times over'), term('slurry')),
        terms: [
          measured('net floor', zone.measure.netM2, 'm2', `netFloor|${prep.zone}`),
          chosen('times over', pass.times, 'number', pass.record),
          allowanceTerm('slurry', site.book.rate('consumables/slurry')),
        ],
      }),
    ];
  });
  return {
    water: passes.map(({ line }) => line),
    toWash: passes.filter(({ goes }) => goes === 'wash').map(({ line }) => line),
    slurry,
  };
}

function waterOf({ prep }: ZoneWork, method: string, of: string, hours: readonly Line[]): Line {
  const terms = hours.map((line) => lineTerm(line.key, line));
  return makeLine({
    code: 'sprayedWater',
    of,
    trade: 'material',
    unit: 'L',
    zone: prep.zone,
    records: hours.flatMap(({ records }) => records),
    formula: multiply(sumOf(terms.map(({ name }) => name)), number(60), term('water')),
    terms: [...terms, waterTerm(method)],
  });
}

function waterTerm(method: string): Term {
  const litres = methodOf(method)?.dust.waterLMin ?? 0;
  return { name: 'water', value: fixed(litres), unit: 'L/min', from: null, ...PRACTICE };
}
