/** Phases, and what is done before and after the floor itself. */

export const phaseWords = {
  title: 'When',
  phase: 'Phase',
  none: 'In no phase',
  help: 'A phase is a night, a weekend or an aisle: a visit with its own set-up and tear-down. What it meets of an earlier phase is a lap line, and is protected.',
  add: 'Add a phase',
  change: 'Change phases',
  usual: (number: number): string => `Phase ${String(number)}`,
  dialog: 'Phases, in the order of the work',
  dialogHelp: 'Zones in no phase are worked together, before the first phase.',
  name: (number: number): string => `Name of phase ${String(number)}`,
  zones: (count: number): string => (count === 1 ? '1 zone' : `${String(count)} zones`),
  earlier: 'Earlier',
  later: 'Later',
  remove: 'Take out',
  moveEarlier: (name: string): string => `Earlier: ${name}`,
  moveLater: (name: string): string => `Later: ${name}`,
  takeOut: (name: string): string => `Take out ${name}`,
  close: 'Done',
  nameMissing: 'A phase has a name: type one.',
};

export const besidesWords = {
  title: 'Before and after',
  goods: 'Goods on the floor',
  goodsBy: { others: 'Others clear them', us: 'We move them' },
  goodsArea: 'Floor under light goods',
  goodsSay: 'Besides what is drawn as cleared before.',
  mask: 'Walls masked',
  groove: 'Groove at stop lines',
  csp: 'Profile compared',
  pull: 'Pull-off tests',
  rh: 'RH probes',
  answers: { no: 'No', yes: 'Yes' },
  mockUp: 'Mock-up first',
  mockUpSay: 'A patch to agree on. Empty: none.',
  cuts: 'Grooves, probe holes and cores cut into the slab: not before what lies in it has been located. Use a shroud and a vacuum; local rules come first.',
};

export const zoneHoursWords = {
  work: 'Hours of work',
  crew: (persons: number): string => (persons === 1 ? 'Time of one person' : `Time of a crew of ${String(persons)}`),
};

/** Edge tools that would reach the profile, cheapest first. */
export const edgeReaches = (tools: readonly string[]): string =>
  tools.length === 0 ? 'No edge tool of the book reaches it.' : `These reach it: ${tools.join('; ')}.`;
