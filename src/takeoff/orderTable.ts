import { chemicalCautions, type Caution } from './cautions.ts';
import type { Line } from './line.ts';
import { ORDERED, type OrderedItem, type OrderGroup } from './orders.ts';
import { spareIn } from './orderLines.ts';
import type { Takeoff } from './port.ts';
import { TEXTURE_AT } from './textureLines.ts';

/*
 * The list to buy and carry as people read it, the same on screen and in files:
 *
 *                        used      to carry       left over
 *   Tooling
 *   Cup wheels           0.52      2 wheels       1.48
 *   Fillers
 *   Crack filler         2.42 L    5 cartridges   0.58 L
 */

/** One kind of an item: a grit, a bond, a size, the machine it sits on. */
export interface OrderKind {
  /** Parts joined by a bar: records, abrasives, words. */
  readonly kind: string;
  /** Lines of the zones that use this kind up. */
  readonly used: readonly Line[];
  readonly packs: Line;
}

export interface OrderRow {
  readonly item: OrderedItem;
  /** Lines of the zones that use it up. */
  readonly used: readonly Line[];
  /** Its kinds; none where one is as good as another. */
  readonly kinds: readonly OrderKind[];
  readonly order: Line;
  /** How many of them are spare ones. */
  readonly spare: number;
  readonly left: Line;
}

export interface OrderedGroup {
  readonly group: OrderGroup;
  readonly rows: readonly OrderRow[];
  /** What can hurt, each said once. */
  readonly cautions: readonly Caution[];
}

const GROUPS: readonly OrderGroup[] = ['tooling', 'fillers', 'chemicals', 'waste'];

/** Items of a takeoff by group, in the order of the table of items; groups of which nothing is needed are left out. */
export function orderTable({ lines }: Takeoff): readonly OrderedGroup[] {
  const rows = ORDERED.flatMap((item) => rowOf(item, lines));
  return GROUPS.flatMap((group): OrderedGroup[] => {
    const own = rows.filter((row) => row.item.group === group);
    return own.length === 0 ? [] : [{ group, rows: own, cautions: cautionsOf(own) }];
  });
}

function rowOf(item: OrderedItem, lines: readonly Line[]): OrderRow[] {
  const order = lines.find((line) => line.code === item.code);
  const left = lines.find((line) => line.code === `orderLeft.${item.item}`);
  if (!order || !left) return [];
  const used = lines.filter((line) => item.usedBy.includes(line.code));
  const packs = lines.filter((line) => line.code === `orderPacks.${item.item}`);
  return [
    {
      item,
      used,
      kinds: packs.map((line) => ({
        kind: line.key.split('|').slice(2).join('|'),
        used: used.filter(({ key }) => line.working.terms.some((term) => term.from === key)),
        packs: line,
      })),
      order,
      spare: spareIn(order),
      left,
    },
  ];
}

/** Those of chemicals that must not meet come first: nothing that may kill is left unsaid. */
function cautionsOf(rows: readonly OrderRow[]): readonly Caution[] {
  const together = chemicalCautions(new Set(rows.map(({ item }) => item.item)));
  return [...new Set([...together, ...rows.flatMap(({ item }) => item.cautions)])];
}

/** What the layer of the topping needs in one zone. */
export interface ToppingRow {
  readonly zone: NonNullable<Line['zone']>;
  /** The film alone; null where its thickness is not set. */
  readonly film: Line | null;
  /** What the texture takes besides; null where the profile is not known. */
  readonly texture: Line | null;
  /** Profiles, CSP, whose texture depth it is worked out with. */
  readonly profiles: readonly number[];
  /** The film is thinner than three times the texture: it may show through (common practice, no source). */
  readonly thin: boolean;
}

const SHOWS_THROUGH = 3;

/** Topping of each zone of which it is known what is laid. */
export function toppingRows({ lines }: Takeoff): readonly ToppingRow[] {
  const own = lines.filter(({ code, zone }) => zone !== null && (code === 'toppingFilm' || code === 'textureFill'));
  return [...new Set(own.flatMap(({ zone }) => zone ?? []))].map((zone) => {
    const of = (code: string): Line | null => own.find((line) => line.zone === zone && line.code === code) ?? null;
    const [film, texture] = [of('toppingFilm'), of('textureFill')];
    const thin = film !== null && texture !== null && film.quantity.likely < SHOWS_THROUGH * texture.quantity.likely;
    return { zone, film, texture, profiles: profilesIn(texture), thin };
  });
}

function profilesIn(texture: Line | null): number[] {
  const names = texture?.working.terms.map(({ name }) => name) ?? [];
  return names.filter((name) => name.startsWith(TEXTURE_AT)).map((name) => Number(name.slice(TEXTURE_AT.length)));
}
