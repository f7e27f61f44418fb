import type { Caution } from './cautions.ts';
import type { Trade } from './line.ts';

/** Where an item stands on the list to buy and carry. */
export type OrderGroup = 'tooling' | 'fillers' | 'chemicals' | 'waste';

/**
 * What is carried over what is needed; nothing where any shop has it. One for each machine: sets of a machine. One:
 * tools that break. A tenth: goods that have to be waited for. Common practice, no source.
 */
export type Spare = 'none' | 'perMachine' | 'one' | 'tenth';

/** One thing to buy and carry, whatever kinds of it there are (grit, bond, size). */
export interface OrderedItem {
  readonly item: string;
  readonly code: `order.${string}`;
  readonly group: OrderGroup;
  readonly trade: Extract<Trade, 'material' | 'dust'>;
  /** Codes of the lines that use it up. All are in `unit`. */
  readonly usedBy: readonly string[];
  readonly unit: string;
  /** Rate that says how much of `unit` one pack holds; null: it is carried in whole ones of `unit`. */
  readonly pack: string | null;
  readonly packUnit: string;
  readonly spare: Spare;
  /** Code of its price: of one `unit` if what is used is charged, of one pack otherwise. Null: it costs nothing. */
  readonly priceCode: string | null;
  /** used: tooling, charged by what the job wears off. packs: single-use goods, charged by whole packs. */
  readonly charge: 'used' | 'packs';
  readonly cautions: readonly Caution[];
}

/** Tooling: worn by the job and charged by its wear, carried whole. */
function tool(item: string, usedBy: string, unit: string, spare: Spare, cautions: readonly Caution[]): OrderedItem {
  return {
    item,
    code: `order.${item}`,
    group: 'tooling',
    trade: 'material',
    usedBy: [usedBy],
    unit,
    pack: null,
    packUnit: unit,
    spare,
    priceCode: item,
    charge: 'used',
    cautions,
  };
}

type Goods = Pick<OrderedItem, 'item' | 'usedBy' | 'unit' | 'pack' | 'packUnit' | 'cautions'> & {
  readonly priceCode?: string | null;
};

/** Goods that are used once and paid by whole packs. */
function goods(group: OrderGroup, { priceCode, ...row }: Goods): OrderedItem {
  const trade = group === 'waste' ? 'dust' : 'material';
  const price = priceCode === undefined ? row.item : priceCode;
  return { ...row, code: `order.${row.item}`, group, trade, spare: 'none', priceCode: price, charge: 'packs' };
}

const CAN = { unit: 'L', pack: 'consumables/chemical_can', packUnit: 'cans', cautions: ['chemical'] } as const;
const CARTRIDGE = { unit: 'L', pack: 'consumables/cartridge', packUnit: 'cartridges', cautions: ['resin'] } as const;
const SACK = { packUnit: 'bags', cautions: ['silica'] } as const;

const TOOLING: readonly OrderedItem[] = [
  tool('diamondSet', 'diamondWear', 'sets', 'perMachine', ['rotating']),
  tool('pcdSet', 'pcdWear', 'sets', 'perMachine', ['rotating']),
  tool('resinSet', 'resinWear', 'sets', 'perMachine', ['rotating']),
  tool('bushSet', 'bushWear', 'sets', 'perMachine', ['rotating']),
  tool('cutterSet', 'cutterWear', 'sets', 'perMachine', ['rotating', 'chips']),
  tool('millTeeth', 'millWear', 'sets', 'perMachine', ['rotating', 'chips']),
  tool('scabblerBits', 'bitWear', 'sets', 'perMachine', ['chips', 'vibration']),
  tool('cup', 'cupWear', 'wheels', 'one', ['wheel']),
  tool('chaseBlade', 'bladeWear', 'blades', 'one', ['wheel', 'locate']),
  tool('peenerFlaps', 'flapWear', 'sets', 'one', ['chips', 'vibration']),
  tool('needleSet', 'needleWear', 'sets', 'one', ['chips', 'vibration']),
  tool('chisel', 'chiselWear', 'chisels', 'none', ['chips', 'locate']),
  tool('scraperBlade', 'scraperWear', 'blades', 'none', ['chips']),
  tool('screen', 'screenWear', 'screens', 'none', []),
  tool('sandpaper', 'paperWear', 'discs', 'none', []),
  tool('stripPad', 'padWear', 'pads', 'none', []),
  { ...tool('shot', 'shotLoss', 'kg', 'tenth', ['shot']), pack: 'consumables/shot_bag', packUnit: 'bags' },
  goods('tooling', {
    item: 'blastGrit',
    usedBy: ['blastGrit'],
    unit: 'kg',
    pack: 'consumables/grit_bag',
    ...SACK,
    cautions: ['silicaNotListed', 'chips'],
  }),
];

const FILLERS: readonly OrderedItem[] = [
  goods('fillers', { item: 'crackFiller', usedBy: ['crackFillerBuy'], priceCode: 'filler', ...CARTRIDGE }),
  goods('fillers', { item: 'jointFiller', usedBy: ['jointFillerBuy'], priceCode: 'filler', ...CARTRIDGE }),
  goods('fillers', { item: 'sealant', usedBy: ['sealantBuy'], ...CARTRIDGE }),
  goods('fillers', {
    item: 'mixer',
    usedBy: ['mixers'],
    unit: 'mixers',
    pack: null,
    packUnit: 'mixers',
    cautions: [],
  }),
  goods('fillers', {
    item: 'backerRod',
    usedBy: ['backerRod'],
    unit: 'm',
    pack: 'consumables/backer_roll',
    packUnit: 'rolls',
    cautions: [],
  }),
  goods('fillers', { item: 'fillSand', usedBy: ['fillSand'], unit: 'kg', pack: 'consumables/sand_bag', ...SACK }),
  goods('fillers', {
    item: 'repairMortar',
    usedBy: ['mortarBuy'],
    unit: 'L',
    pack: 'consumables/mortar_bag',
    packUnit: 'bags',
    cautions: ['chemical', 'silica'],
  }),
  goods('fillers', {
    item: 'jointTape',
    usedBy: ['jointTape'],
    unit: 'm',
    pack: 'consumables/tape_roll',
    packUnit: 'rolls',
    cautions: [],
  }),
  goods('fillers', {
    item: 'maskFilm',
    usedBy: ['maskFilm'],
    unit: 'm',
    pack: 'consumables/film_roll',
    packUnit: 'rolls',
    cautions: [],
  }),
];

const CHEMICALS: readonly OrderedItem[] = [
  goods('chemicals', { item: 'degreaser', usedBy: ['concentrate.degreaser'], ...CAN }),
  goods('chemicals', { item: 'cleaner', usedBy: ['concentrate.cleaner'], ...CAN }),
  goods('chemicals', { item: 'finishStripper', usedBy: ['concentrate.finishStripper'], ...CAN }),
  goods('chemicals', {
    item: 'coatingStripper',
    usedBy: ['concentrate.coatingStripper'],
    ...CAN,
    cautions: ['chemical', 'fire'],
  }),
  goods('chemicals', { item: 'etch', usedBy: ['concentrate.etch'], ...CAN }),
  goods('chemicals', { item: 'etchGel', usedBy: ['concentrate.etchGel'], ...CAN }),
  goods('chemicals', {
    item: 'hypochlorite',
    usedBy: ['concentrate.hypochlorite'],
    ...CAN,
    cautions: ['hypochlorite', 'chemical'],
  }),
  goods('chemicals', {
    item: 'neutraliser',
    usedBy: ['concentrate.neutraliser'],
    unit: 'kg',
    pack: 'consumables/soda_pack',
    packUnit: 'packs',
    cautions: ['chemical'],
  }),
  goods('chemicals', {
    item: 'water',
    usedBy: ['water'],
    unit: 'L',
    pack: null,
    packUnit: 'L',
    priceCode: null,
    cautions: ['slips'],
  }),
];

const WASTE: readonly OrderedItem[] = [
  goods('waste', {
    item: 'dustBag',
    usedBy: ['dustMass'],
    unit: 'kg',
    pack: 'consumables/bag_fill',
    priceCode: 'bag',
    ...SACK,
  }),
  goods('waste', { item: 'rubbleSack', usedBy: ['rubbleMass'], unit: 'kg', pack: 'consumables/bag_fill', ...SACK }),
  goods('waste', {
    item: 'drum',
    usedBy: ['slurry', 'washWater'],
    unit: 'L',
    pack: 'consumables/drum',
    packUnit: 'drums',
    cautions: ['slips', 'heavy'],
  }),
  { ...tool('filter', 'filterWear', 'filters', 'one', ['silica']), group: 'waste', trade: 'dust' },
];

/**
 * Everything that may have to be bought and carried, in the order of the list. Each item has one line for the whole
 * floor, `order.<item>`, in whole packs with its spare ones; `orderPacks.<item>` are its kinds one by one, and
 * `orderLeft.<item>` is what stays over. An item that nothing uses has no lines.
 */
export const ORDERED: readonly OrderedItem[] = [...TOOLING, ...FILLERS, ...CHEMICALS, ...WASTE];

/** The item that a line `order.`, `orderPacks.` or `orderLeft.` speaks of; null for any other line. */
export function orderedItem(code: string): OrderedItem | null {
  const [kind, item] = code.split('.');
  if (kind !== 'order' && kind !== 'orderPacks' && kind !== 'orderLeft') return null;
  return ORDERED.find((row) => row.item === item) ?? null;
}
