import { methodOf } from '../../takeoff/rates/methods.ts';
import type { MethodGroup } from '../../takeoff/rates/methodRow.ts';
import type { RateRow } from '../../takeoff/rates/rateRow.ts';

/** Tables of the rate book on screen, in their order. `machine`: what a machine of the job has for itself. */
export const RATE_TABLES = [
  'machine',
  'clean',
  'takeOff',
  'grind',
  'rough',
  'edges',
  'repairs',
  'site',
  'concrete',
  'room',
  'removal',
  'tooling',
  'goods',
  'chemicals',
  'coverings',
  'texture',
] as const;
export type RateTable = (typeof RATE_TABLES)[number];

/** What is looked for together stands together. */
export const TABLE_GROUPS = {
  speed: ['machine', 'clean', 'takeOff', 'grind', 'rough', 'edges', 'repairs', 'site'],
  changes: ['concrete', 'room'],
  used: ['removal', 'tooling', 'goods', 'chemicals', 'coverings', 'texture'],
} as const satisfies Readonly<Record<string, readonly RateTable[]>>;

const ofMethod: Readonly<Record<MethodGroup, RateTable>> = {
  wash: 'clean',
  etch: 'clean',
  buff: 'clean',
  strip: 'clean',
  waterJet: 'clean',
  openBlast: 'clean',
  scrape: 'takeOff',
  handScrape: 'takeOff',
  grind: 'grind',
  handGrind: 'grind',
  bush: 'rough',
  shot: 'rough',
  scarify: 'rough',
  scabble: 'rough',
  handImpact: 'rough',
  chase: 'repairs',
};

/** The first that fits; what no line names stands with the goods, so that no rate is out of sight. */
const byCode: readonly (readonly [RegExp, RateTable])[] = [
  [/^machine\//, 'machine'],
  [/^labour\/(edge_|corner|post_|drain|stair_|doorway|terminate_|upstand_|cove_|steel_)/, 'edges'],
  [/^labour\/(crack_|joint_|spall_)/, 'repairs'],
  [/^(labour|waits)\//, 'site'],
  [/^factors\/(hardness|shot|finding)\//, 'concrete'],
  [/^factors\//, 'room'],
  [/^removal\//, 'removal'],
  [/^texture\//, 'texture'],
  [/^consumables\/(thickness|density)\//, 'coverings'],
  [/^consumables\/(chemical\/|rinse|degreaser|acid|neutraliser|stripper|hypochlorite|soda)/, 'chemicals'],
];
const TOOL_UNITS = /^(m2|m|h) per (?!roll|bag)|^kg per (m2|filter)$/;

/** The table that a rate stands in. */
export function tableOf({ code, unit }: Pick<RateRow, 'code' | 'unit'>): RateTable {
  const method = code.startsWith('methods/') ? methodOf(code.slice('methods/'.length)) : null;
  if (method) return ofMethod[method.group];
  const hit = byCode.find(([pattern]) => pattern.test(code));
  if (hit) return hit[1];
  return TOOL_UNITS.test(unit) ? 'tooling' : 'goods';
}
