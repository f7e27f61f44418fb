import { moneyTitleOf } from './moneyWords.ts';
import { orderTitleOf } from './orderWords.ts';
import { costTitleOf } from './workWords.ts';

/** What the takeoff says: titles of its lines, faults, holds, reasons, cautions. English; codes come from src/takeoff. */

const LINE_TITLES: Readonly<Record<string, string>> = {
  grossFloor: 'Slab, inside its outlines',
  deduction: 'Less walls, columns, out of scope',
  netFloorAll: 'Net floor of the slab',
  netFloor: 'Net floor',
  field: 'Machine field',
  fieldOf: 'Machine field',
  tightSpot: 'Tight spot',
  tight: 'Tight spots',
  cornerRests: 'Left in corners by a round head',
  cutOff: 'Cut off: no machine gets there',
  handFloor: 'Floor worked by hand',
  handArea: 'For hand tools only, together',
  handUnder: 'By hand under what stays',
  edge: 'Edge by hand',
  'edge.wall': 'Edge along walls',
  'edge.obstruction': 'Edge round obstructions',
  'edge.drop': 'Edge along drops',
  strip: 'Edge strip',
  stopLine: 'Stop lines',
  groove: 'Termination groove',
  lapLine: 'Lap line to an earlier phase',
  masked: 'Walls and openings to mask',
  goods: 'Under goods that we move',
  mockUp: 'Mock-up',
  treads: 'Steps, treads',
  treadArea: 'Steps, area of treads',
  riserArea: 'Steps, area of risers',
  'tests.csp': 'Profile comparisons',
  'tests.pull': 'Pull-off tests',
  'tests.rh': 'RH probes',
  facesInHandAreas: 'Edge inside hand areas',
  // What the sill adds up of several lines.
  crack: 'Cracks',
  joint: 'Joints',
  upstandArea: 'Upstand faces',
  allEdge: 'Edge of the floor, all of it',
  'tight + cutOff': 'Tight spots and cut-off floor',
  innerCorners: 'Inner corners',
  outerCorners: 'Outer corners',
  obstructions: 'Obstructions',
  'upstandMetres.keep': 'Upstand kept, length',
  'upstandMetres.prepare': 'Upstand to prepare, length',
  'upstandMetres.remove': 'Upstand to remove, length',
  'upstandArea.keep': 'Upstand kept, face',
  'upstandArea.prepare': 'Upstand to prepare, face',
  'upstandArea.remove': 'Upstand to remove, face',
  'hours.machine': 'Machine passes',
  'hours.lanes': 'Machine passes, by lanes',
  'hours.edge': 'Edge by hand',
  'hours.edgeCove': 'Edge under cove or in a pit',
  'hours.corners': 'Inner corners by hand',
  'hours.posts': 'Post bases',
  'hours.drains': 'Drain frames',
  'hours.stopLines': 'Stop lines',
  'hours.groove': 'Termination groove',
  'hours.tight': 'Tight spots',
  'hours.cutOff': 'Cut-off floor by hand',
  'hours.handFloor': 'Floor worked by hand',
  'hours.handUnder': 'By hand under what stays',
  'hours.steps': 'Steps',
  'hours.upstands': 'Upstands',
  'hours.coveRemove': 'Cove base off',
  'hours.hepa': 'Vacuum between passes',
  'hours.vacuum': 'Final vacuum',
  'hours.crackChase': 'Cracks: chase',
  'hours.crackClean': 'Cracks: clean',
  'hours.crackFill': 'Cracks: fill',
  'hours.crackTrim': 'Cracks: grind flush',
  'hours.jointClean': 'Joints: saw out old filler',
  'hours.jointFill': 'Joints: fill',
  'hours.jointTrim': 'Joints: trim flush',
  'hours.reservoir': 'Joints carried through: saw a reservoir',
  'hours.seal': 'Joints carried through: rod and sealant',
  'hours.pitFill': 'Pitting: fill with mortar',
  'hours.jointsProtect': 'Joints: close before shot',
  'hours.jointsClear': 'Joints: clear after shot',
  'hours.steelAngle': 'Steel angle by hand',
  'hours.goods': 'Goods moved',
  'hours.protect': 'Protection',
  'hours.mockUp': 'Mock-up',
  'hours.tests': 'Tests and readings',
  'hours.probes': 'RH probes',
  'hours.machineAll': 'Machine hours',
  'hours.handAll': 'Hand hours',
  'hours.besides': 'Before and after the floor',
  'hours.timeOfWork': 'More for the time of work',
  'hours.zone': 'Hours of the zone',
  'hours.zoneSpan': 'Time of the crew in the zone',
  'hours.zonePerson': 'Person-hours of the zone',
  'hours.work': 'Machine and hand side by side',
  'hours.besidesCrew': 'Before and after, whole crew',
  'hours.setUp': 'Set up',
  'hours.moves': 'Moves between zones',
  'hours.machineChanges': 'Changes to a machine that follows',
  'hours.tearDown': 'Clean up and load',
  'hours.dailyStart': 'Start and close of further days',
  'hours.crewPhase': 'Crew hours of the phase',
  'hours.crew': 'Crew hours',
  'hours.person': 'Person-hours, paid',
  days: 'Days on site',
  'days.phase': 'Days of the phase',
  'wait.drying': 'Wait: drying after wet work',
  'wait.repair': 'Wait: repair mortar',
  'wait.pull': 'Wait: glue of pull-off tests',
  'wait.rh': 'Wait: RH probes',
  calendarDays: 'Days from first to last',
  crackFiller: 'Crack filler in place',
  crackFillerBuy: 'Crack filler to buy',
  jointFiller: 'Joint filler in place',
  jointFillerBuy: 'Joint filler to buy',
  diamondWear: 'Diamonds used up',
  cupWear: 'Cup wheels used up',
  shotLoss: 'Shot lost',
  dustMass: 'Dust',
  dustVolume: 'Dust, loose',
};

const BEHAVIOUR: Readonly<Record<string, string>> = {
  notJudged: 'not judged',
  static: 'static',
  working: 'working, carried through',
  structural: 'structural, engineer first',
};

const WIDTH: Readonly<Record<string, string>> = {
  hairline: 'hairline',
  ordinary: '0.3 to 6 mm',
  wide: 'over 6 mm',
  notMeasured: 'width not measured',
};

const JOINT: Readonly<Record<string, string>> = {
  control: 'Control joints',
  construction: 'Construction joints',
  isolation: 'Isolation joints',
  carried: 'carried through',
  filled: 'filled',
};

/** Title of a line by its code. `findingName` gives the words of a kind of finding. */
export function lineTitleOf(code: string, findingName: (kind: string) => string): string {
  const title = LINE_TITLES[code] ?? orderTitleOf(code) ?? moneyTitleOf(code) ?? costTitleOf(code);
  if (title) return title;
  const [group, first = '', second = ''] = code.split('.');
  if (group === 'crack') return `Cracks, ${BEHAVIOUR[first] ?? first}, ${WIDTH[second] ?? second}`;
  if (group === 'joint') return `${JOINT[first] ?? first}, ${JOINT[second] ?? second}`;
  if (group === 'finding') return findingName(first);
  if (group === 'hours' && first === 'finding') return `${findingName(second)}: clean or remove`;
  return code;
}

export const tradeWords = {
  floor: 'Floor',
  edge: 'Edge',
  line: 'Line',
  spot: 'Spot',
  hours: 'Hours',
  material: 'Material',
  dust: 'Dust',
  money: 'Money',
} as const;

/** What is wrong and what to do, by fault code. */
export const faultWords: Readonly<Record<string, string>> = {
  pageNotTrued: 'This page is not trued: pick two ends of a known length on it and type the length.',
  slabCrossesItself: 'The outline of the slab crosses itself: move a corner so that its edges do not meet.',
  zoneCrossesItself: 'The outline of the zone crosses itself: move a corner so that its edges do not meet.',
  crossesItself: 'This outline crosses itself: move a corner so that its edges do not meet.',
  noArea: 'This outline has no area: draw it again or move its corners apart.',
  tooFewCorners: 'This item has too few corners: draw it again.',
  notANumber: 'A corner of this item is nowhere: draw it again.',
  facesDoNotMatch: 'The edges of this slab do not fit its corners: set the kinds of its edges again.',
  machineMissing: 'The machine of this zone is gone: choose another in Prep.',
  zoneOutsideSlab: 'This zone lies outside the slab: move it on to the floor.',
  findingOutsideSlab: 'This finding lies outside the net floor: move it, or draw it again.',
  crackOutsideSlab: 'This crack lies outside the net floor: move it, or draw it again.',
  jointOutsideSlab: 'This joint lies outside the net floor: move it, or draw it again.',
  lineOutsideSlab: 'This line lies outside the net floor: move it, or draw it again.',
  entranceOutsideSlab: 'This entrance is not on the slab: move it to where machines come in.',
  obstructionOutsideSlab: 'This obstruction lies outside the slab: move it on to the floor.',
  gapTooNarrow: 'The machine does not fit through here: what lies behind is counted as hand work.',
  profileMissing: 'No profile is known for this zone: say what will be laid on it, or set its CSP.',
  recipeMissing: 'Nobody has planned this zone: the first machine of the fleet stands in, with two passes.',
  profileNotReached: 'The last pass does not give the profile that is asked for: change the method or the abrasive.',
  edgeProfileNotReached:
    'The edge tool does not give the profile that is asked for: change it, or agree on a difference in writing.',
  zonesOverlap: 'Two zones overlap here: the later one counts, and nothing counts twice.',
  isolationFilled: 'An isolation joint moves: it is carried through and is not filled.',
  structuralCrack: 'A structural crack waits for an engineer: it is measured, and no filler is planned.',
  upstandRemoveNoRate: 'The rate book has no rate for taking this upstand away: price it by hand.',
  clipFailed: 'This item could not be measured: move one of its corners a little.',
};

/** A hold as one sentence; by kind and by what calls for it. */
export const holdWords: Readonly<Record<string, string>> = {
  'asbestos.finding': 'Suspect asbestos: no work, rate or price here until a laboratory result is recorded.',
  'asbestos.building':
    'Old building and a covering nobody has seen: counts as asbestos until the floor is known. Draw the covering or answer the questions.',
  'lead.finding': 'Paint not tested for lead: no dry grinding, rate or price here until the result is recorded.',
  'inSlab.cutting': 'What lies in the slab is not located: no crack is chased and nothing is cut until it is.',
};

export const notAnOfferWords: Readonly<Record<string, string>> = {
  builtBefore1981: 'Open: was it built 1980 or earlier?',
  coatingOrTile: 'Open: is there a coating or old tile on the floor?',
  inSlab: 'Open: is anything in the slab?',
  gasAppliance: 'Open: is there a gas appliance in the room?',
  coveringNotDrawn: 'There is a coating or tile on the floor, and none is drawn: draw it in Survey.',
  'hold.asbestos': 'A zone is held: suspect asbestos.',
  'hold.lead': 'A zone is held: paint not tested for lead.',
  'hold.inSlab': 'Cutting is held: what lies in the slab is not located.',
  priceMissing: 'Something on this job has no price yet: set it on the money page.',
  pageNotTrued: 'The page is not trued: there are no quantities yet.',
  noSlab: 'No slab is drawn: there are no quantities yet.',
  noFloor: 'This floor is gone.',
};

export const noticeWords: Readonly<Record<string, string>> = {
  samplePrices: 'with sample wages and prices',
  gasAppliance: 'Gas appliance in the room: off and covered by somebody licensed before dust or solvent.',
};

/** How far a recipe gets against the profile that is asked for. */
export const reachWords = {
  ok: 'Reaches the profile.',
  mockUp: 'Reaches it by practice only: agree on a mock-up first.',
  tooSmooth: 'Too smooth: it does not get that rough.',
  tooRough: 'Too rough: it will show through.',
  noTool: 'No tool is chosen.',
} as const;

/**
 * Cautions beside the work. Limits: 29 CFR 1926.1153 (silica), 1926.1101 (asbestos), 1926.62 (lead), 1926.52 (noise),
 * 1910.134 (respirators); NIOSH 96-118 (carbon monoxide). The rest is common practice, no source.
 */
export const cautionWords = {
  asbestos: 'Suspect asbestos: stop, wet it, leave the room, call accredited people.',
  lead: 'Paint may hold lead: no dry sanding or grinding until it is tested.',
  locate: 'Locate cables, pipes, heating and tendons before anything is cut or chipped.',
  gas: 'Gas appliance: off and covered by somebody licensed before dust or solvent. Nothing that burns.',
  silica:
    'Silica dust: shroud and dust collector always on. A handheld tool indoors for over four hours in a shift needs a respirator.',
  silicaNotListed:
    'Silica dust: this method is not in Table 1, so exposure has to be assessed. That is not "nothing needed".',
  vacuumBetweenPasses: 'HEPA vacuum between passes indoors. No dry sweeping, no blowing.',
  earsEyes: 'Hearing and eye protection.',
  wheel: 'Right guard, right wheel, right speed: it can kick or burst.',
  vibration: 'Vibration: take turns, keep hands warm.',
  chips: 'Flying chips: face shield, boots, keep others away.',
  electric: 'Ground-fault protection on every circuit; cords whole, out of water and walkways.',
  heavy: 'Heavy: two people or a ramp to load it; check lift and suspended floors.',
  rotating: 'Turning parts: unplug before changing tools. Tools are hot.',
  shot: 'Shot rolls underfoot: sweep at once. Never over soft or open joints.',
  jet: 'Jet wounds need a doctor at once: keep everybody out of its reach.',
  chemical: 'Skin, eyes, fumes: gloves, goggles, air. Acid into water, never the other way; never mix products.',
  acidAndHypochlorite:
    'Acid and hypochlorite never in one zone on one day: together they give off chlorine gas. Rinse, let it dry, come back.',
  hypochlorite:
    'Hypochlorite: never with acid or ammonia, also not as a neutralising wash. Air the room; gloves, goggles.',
  fire: 'Sparks and vapour: nothing that burns near by; permit and fire watch where the site asks for them.',
  fumes: 'Engine fumes: carbon monoxide kills indoors, also with doors open. Use electric inside.',
  slips: 'Wet floor: slips. Slurry is alkaline: keep it out of drains.',
  fall: 'Open edge or pit: guard or rope it off, nobody works backwards towards it, no machine over it.',
  rideOn: 'Ride-on: seat belt; keep off pits, docks and people.',
  resin: 'Two-part resins: gloves and air; they can make the skin and lungs allergic.',
  localLaw: 'Local law and the site rules come first. Licensed people do electrical, asbestos, lead, structural work.',
} as const;
