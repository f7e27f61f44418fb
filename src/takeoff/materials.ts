import { bladeWear, cupsAlongLines, jointTape, maskFilm } from './cuttingLines.ts';
import { zoneDust } from './dustLines.ts';
import { multiply, sumOf, term } from './formula.ts';
import { grouped } from './grouped.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { zoneFillers } from './materialLines.ts';
import { zoneMortar } from './mortarLines.ts';
import { orderLines, plainUse, type Use } from './orderLines.ts';
import type { RateBook } from './rates/rateBook.ts';
import { carriedRuns, zoneSealant } from './sealantLines.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, lineTerm } from './terms.ts';
import { zoneTexture } from './textureLines.ts';
import { zoneTooling } from './toolingLines.ts';
import { zoneWet } from './wetLines.ts';

/**
 * Material and dust of the zones that no hold stands on, and what is to be bought and carried for all of them. A held
 * zone uses nothing and orders nothing. `hours` are the lines of hours of those zones.
 */
export function materialOf(site: Site, hours: readonly Line[]): Line[] {
  const byZone = grouped(hours, ({ zone }) => zone ?? '');
  const zones = site.zones
    .filter((zone) => zone.held === null)
    .map((zone) => zoneMaterial(site, zone, byZone.get(zone.prep.zone) ?? []));
  const lines = zones.flatMap((zone) => zone.lines);
  const uses = zones.flatMap((zone) => zone.uses);
  const orders = orderLines(site.book, uses);
  const mixers = mixersOf(site.book, orders);
  return [
    ...lines,
    ...uses.map(({ line }) => line),
    ...mixers,
    ...orders,
    ...orderLines(site.book, mixers.map(plainUse)),
    ...glueWait(site.book, orders),
  ];
}

interface ZoneMaterial {
  /** What is of interest beside what is used up. */
  readonly lines: readonly Line[];
  readonly uses: readonly Use[];
}

function zoneMaterial(site: Site, zone: ZoneWork, hours: readonly Line[]): ZoneMaterial {
  const tooling = zoneTooling(site, zone);
  const fillers = [...zoneFillers(site, zone), ...zoneMortar(site, zone)];
  const carried = carriedRuns(site, zone);
  const sealant = zoneSealant(site, zone, carried);
  const grit = tooling.map(({ line }) => line).filter(({ code }) => code === 'blastGrit');
  const dust = zoneDust(site, zone, grit);
  return {
    lines: [...sealant.lines, ...dust.lines, ...zoneTexture(site, zone)],
    uses: [
      ...tooling,
      ...cupsAlongLines(site, zone, hours),
      ...bladeWear(site, zone, carried),
      ...fillers.map(plainUse),
      ...sealant.uses,
      ...jointTape(site, zone),
      ...maskFilm(site, zone),
      ...zoneWet(site, zone, hours),
      ...dust.uses,
    ],
  };
}

const TWO_PART: readonly string[] = ['order.crackFiller', 'order.jointFiller'];

/** Static mixers by the cartridge: one is lost at each stop that is longer than the pot life. */
function mixersOf(book: RateBook, orders: readonly Line[]): Line[] {
  const cartridges = orders.filter(({ code }) => TWO_PART.includes(code));
  if (cartridges.length === 0) return [];
  const terms = cartridges.map((line) => lineTerm(line.key, line));
  return [
    makeLine({
      code: 'mixers',
      trade: 'material',
      unit: 'mixers',
      zone: null,
      records: [],
      formula: multiply(sumOf(terms.map(({ name }) => name)), term('for each')),
      terms: [...terms, allowanceTerm('for each', book.rate('consumables/mixers'))],
    }),
  ];
}

const GLUED: readonly string[] = ['order.screen', 'order.sandpaper'];

/** Discs that the crew glues to their plates wait before they are used: minutes, which are nobody's hours. */
function glueWait(book: RateBook, orders: readonly Line[]): Line[] {
  if (!orders.some(({ code }) => GLUED.includes(code))) return [];
  const wait = allowanceTerm('contact time', book.rate('consumables/pad_glue_dry'));
  const base = { code: 'glueWait', trade: 'material', unit: 'min', zone: null, records: [] } as const;
  return [makeLine({ ...base, formula: term('contact time'), terms: [wait] })];
}
