import type { Point } from '../geometry/floorShape.ts';
import { ringToGrid } from '../geometry/grid.ts';
import type { RecordId } from '../model/cell.ts';
import { onFloor } from '../model/doc.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawZoneArgs = NewItem & {
  /** Null: whatever no other zone covers. One of these a floor. */
  readonly ring: readonly Point[] | null;
  readonly system?: { readonly kind: string; readonly thicknessMm?: number } | null;
  readonly csp?: { readonly min: number; readonly max: number } | null;
  readonly place?: 'indoor' | 'outdoor';
  readonly wetAllowed?: boolean;
  readonly hardness?: 'soft' | 'medium' | 'hard' | 'veryHard';
  readonly recipe?: RecordId | null;
};

export const drawZone: Command<DrawZoneArgs> = {
  name: 'drawZone',
  refuse(doc, args) {
    const taken = args.ring === null && onFloor(doc, 'zone', args.floor).some((zone) => zone.covers === 'rest');
    return taken ? 'restTaken' : refuseNewItem(doc, args, 'zone');
  },
  write: (doc, args) =>
    newItemCells(doc, args, 'zone', {
      covers: args.ring ? 'ring' : 'rest',
      ring: args.ring ? ringToGrid(args.ring) : undefined,
      system: args.system,
      csp: args.csp,
      place: args.place ?? 'indoor',
      wetAllowed: args.wetAllowed ?? false,
      hardness: args.hardness ?? 'medium',
      recipe: args.recipe,
    }),
};
