import { add, divide, multiply, number, sumOf, term, wholeUp } from './formula.ts';
import { grouped } from './grouped.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { edgeTimesOver } from './prep.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, lineTerm, measured, rateTerm } from './terms.ts';
import { methodIn, passKey, workedFields } from './workedFields.ts';

/** Wear of diamonds, cup wheels and shot in a zone, by area and life: what the job uses up, not what must be carried. */
export function zoneTooling(site: Site, zone: ZoneWork): Line[] {
  return [...diamondWear(site, zone), ...cupWear(site, zone), ...shotLoss(site, zone)].filter(
    (line) => line.quantity.high > 0,
  );
}

function base({ prep }: ZoneWork, code: string, unit: string, of?: string) {
  const records = prep.zone === 'rest' ? [] : [prep.zone];
  return { code, unit, trade: 'material', zone: prep.zone, records, ...(of === undefined ? {} : { of }) } as const;
}

function diamondWear(site: Site, zone: ZoneWork): Line[] {
  const { prep } = zone;
  return prep.passes.flatMap((pass, i) =>
    workedFields(zone).flatMap((field) => {
      if (methodOf(pass.method)?.group !== 'grind' || methodOf(methodIn(pass, field))?.group !== 'grind') return [];
      const life = site.book.rate(`consumables/${lifeOf(pass.abrasive, prep.record?.hardness ?? 'medium')}`);
      return [
        makeLine({
          ...base(zone, 'diamondWear', 'sets', passKey(pass, i, field)),
          formula: divide(multiply(term('field'), term('times over')), term('life')),
          terms: [
            measured('field', field.areaM2, 'm2', field.from),
            chosen('times over', pass.times, 'number', pass.record),
            rateTerm('life', life),
          ],
        }),
      ];
    }),
  );
}

function lifeOf(abrasive: string | null, hardness: string): string {
  if (abrasive === 'pcd') return 'pcd_set';
  if (hardness === 'soft') return 'diamond_set_soft';
  return hardness === 'medium' ? 'diamond_set_medium' : 'diamond_set_hard';
}

function cupWear(site: Site, zone: ZoneWork): Line[] {
  const { prep, measure } = zone;
  const cups = prep.passes.some((pass) => methodOf(pass.edgeMethod ?? '')?.group === 'handGrind');
  if (!cups) return [];
  const upstands = site.quantities.get(`upstandArea.prepare|${prep.zone}`);
  return [
    makeLine({
      ...base(zone, 'cupWear', 'wheels'),
      formula: divide(
        add(multiply(add(term('strip'), term('hand areas')), term('edge passes')), term('upstands to prepare')),
        term('life'),
      ),
      terms: [
        measured('strip', measure.stripM2, 'm2', `strip|${prep.zone}`),
        measured('hand areas', measure.tightM2, 'm2', `handArea|${prep.zone}`),
        chosen('edge passes', edgeTimesOver(prep), 'number'),
        measured('upstands to prepare', upstands?.quantity.likely ?? 0, 'm2', upstands?.key ?? null),
        rateTerm('life', site.book.rate('consumables/cup_125')),
      ],
    }),
  ];
}

function shotLoss(site: Site, zone: ZoneWork): Line[] {
  return zone.prep.passes.flatMap((pass, i) =>
    workedFields(zone).flatMap((field) => {
      if (methodOf(pass.method)?.group !== 'shot' || methodOf(methodIn(pass, field))?.group !== 'shot') return [];
      const row = site.book.rate('consumables/shot');
      return [
        makeLine({
          ...base(zone, 'shotLoss', 'kg', passKey(pass, i, field)),
          formula: multiply(term('field'), term('times over'), term('loss')),
          terms: [
            measured('field', field.areaM2, 'm2', field.from),
            chosen('times over', pass.times, 'number', pass.record),
            { ...rateTerm('loss', row), value: { low: row.low, likely: row.likely, high: row.high } },
          ],
        }),
      ];
    }),
  );
}

/** Machine of a line of wear that follows another one; null for the machine of the pass. */
function followerOf(line: Line): string | null {
  return line.key.split('|')[3] ?? null;
}

/** Sets to carry: whole ones and a spare one. A set stays on its machine, so one that follows has its own. */
export function diamondSets(wear: readonly Line[]): Line | null {
  if (wear.length === 0) return null;
  const terms = wear.map((line) => lineTerm(line.key, line));
  const byMachine = grouped(wear, (line) => followerOf(line) ?? '');
  const sets = [...byMachine.values()].map((lines) => wholeUp(sumOf(lines.map((line) => line.key))));
  return makeLine({
    code: 'diamondSets',
    trade: 'material',
    unit: 'sets',
    zone: null,
    records: [],
    formula: add(...sets, number(1)),
    terms,
  });
}
