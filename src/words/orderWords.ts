/** What the list to buy and carry says: titles of its lines and items, kinds, groups. English; codes from src/takeoff. */

/** Titles of lines of use, of which a zone has its own. */
const USE_TITLES: Readonly<Record<string, string>> = {
  pcdWear: 'Polycrystalline sets used up',
  resinWear: 'Resin-bond sets used up',
  bushWear: 'Bush-hammer rollers used up',
  cutterWear: 'Scarifier cutters used up',
  millWear: 'Milling teeth used up',
  bitWear: 'Scabbler bits used up',
  flapWear: 'Peening flaps used up',
  needleWear: 'Needles used up',
  chiselWear: 'Chisels used up',
  bladeWear: 'Chase blades used up',
  screenWear: 'Screens used up',
  paperWear: 'Sandpaper used up',
  padWear: 'Stripping pads used up',
  scraperWear: 'Scraper blades used up',
  blastGrit: 'Blasting abrasive',
  sandedFill: 'Wide cracks, sand-filled, in place',
  fillSand: 'Dry sand for wide cracks',
  sealant: 'Sealant in place',
  sealantBuy: 'Sealant to buy',
  backerRod: 'Backer rod',
  backerSize: 'Backer rod, least diameter',
  mixers: 'Static mixers',
  mortar: 'Repair mortar in place',
  mortarBuy: 'Repair mortar to buy',
  jointTape: 'Tape over open joints',
  maskFilm: 'Masking film',
  rinse: 'Rinse water',
  sprayedWater: 'Water of jets and sprays',
  water: 'Water on site',
  washWater: 'Wash water to pick up',
  slurry: 'Slurry to pick up',
  'washWater + slurry': 'Slurry and wash water to pick up',
  'slurry + washWater': 'Slurry and wash water to pick up',
  rubbleMass: 'Scrapings and rubble',
  filterWear: 'Vacuum filters used up',
  glueWait: 'Glued discs wait before use',
  textureFill: 'Extra topping for the texture',
  toppingFilm: 'Topping, film alone',
};

/** An item of the list, in plural: it is counted. */
export const itemWords: Readonly<Record<string, string>> = {
  diamondSet: 'Metal-bond diamond sets',
  pcdSet: 'Polycrystalline sets',
  resinSet: 'Resin-bond sets',
  bushSet: 'Sets of bush-hammer rollers',
  cutterSet: 'Sets of scarifier cutters',
  millTeeth: 'Sets of milling teeth',
  scabblerBits: 'Sets of scabbler bits',
  cup: 'Cup wheels',
  chaseBlade: 'Chase blades',
  peenerFlaps: 'Sets of peening flaps',
  needleSet: 'Sets of needles',
  chisel: 'Chisels',
  scraperBlade: 'Scraper blades',
  screen: 'Sanding screens',
  sandpaper: 'Sandpaper discs',
  stripPad: 'Stripping pads',
  shot: 'Steel shot',
  blastGrit: 'Blasting abrasive, no silica',
  crackFiller: 'Crack filler',
  jointFiller: 'Joint filler, semi-rigid',
  sealant: 'Flexible sealant',
  mixer: 'Static mixers',
  backerRod: 'Backer rod',
  fillSand: 'Dry sand',
  repairMortar: 'Repair mortar',
  jointTape: 'Joint tape',
  maskFilm: 'Masking film with tape',
  degreaser: 'Degreaser',
  cleaner: 'Cleaner without solvent',
  finishStripper: 'Alkaline floor stripper',
  coatingStripper: 'Coating stripper',
  etch: 'Etch concentrate',
  etchGel: 'Etch gel',
  neutraliser: 'Baking soda to neutralise',
  hypochlorite: 'Hypochlorite',
  water: 'Water',
  dustBag: 'Dust bags',
  rubbleSack: 'Rubble sacks',
  drum: 'Drums for slurry and wash water',
  filter: 'Vacuum filters',
};

const CHEMICAL: Readonly<Record<string, string>> = {
  degreaser: 'Degreaser',
  cleaner: 'Cleaner without solvent',
  finishStripper: 'Alkaline floor stripper',
  coatingStripper: 'Coating stripper',
  etch: 'Etch',
  etchGel: 'Etch gel',
  neutraliser: 'Neutralising wash',
  hypochlorite: 'Hypochlorite wash',
};

/** Kinds of an item, shorter than the book has them: the item says the rest. Ids of abrasives, cups and bonds. */
export const kindWords: Readonly<Record<string, string>> = {
  d6: 'grit 6-16',
  d16: 'grit 16-20',
  d30: 'grit 25-30',
  d40: 'grit 40',
  d80: 'grit 60-80',
  d120: 'grit 100-150',
  anyGrit: 'grit not chosen',
  bondHard: 'hard bond',
  bondMedium: 'medium bond',
  bondSoft: 'soft bond',
  bondExtraSoft: 'extra soft bond',
  hand_grinder: '125 mm',
  hand_grinder_180: '180 mm',
  cup_single: 'single row',
  cup_double: 'double row',
  cup_turbo: 'continuous turbo',
  screen60: 'grit 60-80',
  screen100: 'grit 80-120',
  paper16: 'grit 16-36',
  paper60: 'grit 60-100',
  shot_s170: 'S-170',
  shot_s230: 'S-230',
  shot_s280: 'S-280',
  shot_s330: 'S-330',
  shot_s390: 'S-390',
  shot_s460: 'S-460',
  shot_s550: 'S-550',
  anySize: 'size not chosen',
};

/** Title of a line of use or of the order; null for any other code. */
export function orderTitleOf(code: string): string | null {
  const [group = '', item = ''] = code.split('.');
  switch (group) {
    case 'order':
      return `${itemWords[item] ?? item}, to carry`;
    case 'orderPacks':
      return itemWords[item] ?? item;
    case 'orderLeft':
      return `${itemWords[item] ?? item}, left over`;
    case 'chemical':
      return `${CHEMICAL[item] ?? item}, as put on`;
    case 'concentrate':
      return `${CHEMICAL[item] ?? item}, as bought`;
    default:
      return USE_TITLES[code] ?? null;
  }
}

/** A unit that is counted, beside its number: 1 bag, 2 bags. */
export function countedUnit(count: number, unit: string): string {
  return count === 1 && unit.length > 2 ? unit.replace(/s$/, '') : unit;
}

export const orderGroupWords = {
  tooling: 'Tooling',
  fillers: 'Fillers, tape, film',
  chemicals: 'Chemicals and water',
  waste: 'Dust and waste',
} as const;

export const orderText = {
  title: 'To buy and carry',
  intro: 'For this floor. Whole packs, with spare ones of what has to be waited for; left over if the likely is used.',
  item: 'Item',
  used: 'Used',
  carry: 'To carry',
  left: 'Left over',
  spare: (count: number): string => `${count} spare`,
  over: (figure: string): string => `${figure} over`,
  under: 'under 0.01',
  nothing: 'Nothing to buy or carry.',
  nothingHeld: 'Nothing to buy or carry: every zone is held until its result is recorded.',
  heldToo: 'A hold stands on this floor: what is held orders nothing.',
  notSawn:
    'What lies in the slab is not located: nothing is cut, so filler, sealant and blades of what would be cut are not on this list.',
  file: 'to buy and carry',
  zone: 'Zone',
  film: 'Film alone',
  texture: 'Extra for the texture',
  copy: 'Copy the list',
  save: 'Save the list',
  copied: 'The list is on the clipboard: paste it into a spreadsheet.',
  notCopied: 'This browser does not let the page copy. Save the list instead.',
  topping: 'For the layer of the topping',
  toppingNote:
    'Not ours to buy. The extra is on top of the film only if the thickness is asked for over the peaks. Texture depths are estimates: a sand patch (ASTM E965) says more.',
  patch: 'Measured with sand',
  patchHelp: 'Spread so much sand to a circle and type both: the depth takes the place of the estimate.',
  patchSand: 'Sand',
  patchAcross: 'Circle across',
  patchDepth: (depth: string): string => `Mean texture depth ${depth}.`,
  patchKeep: (csp: number): string => `Keep for CSP ${csp}`,
  patchKept: (csp: number): string => `This job now counts with the measured depth for CSP ${csp}.`,
  patchSource: 'sand patch, ASTM E965',
  thinFilm: 'The film is under three times the texture depth: the profile may show through.',
  shelf: 'Common practice, no source, unless Why says otherwise. Safety data sheets come before this list.',
} as const;

/** Cautions that stand beside a group as a whole. Sources in words/takeoffWords.ts and here. */
export const wasteText = {
  /** MPCA-SLURRY, read; 40 CFR 261.22 (pH 12.5), read second-hand. */
  slurry:
    'Slurry and etch water: not to drains or ground; from pH 12.5 it is corrosive hazardous waste. Solidify or neutralise as local rules say.',
  /** Common practice, no source. */
  sample: 'Dust of old coatings: sample it before it is thrown away. Full drums are too heavy by hand.',
} as const;
