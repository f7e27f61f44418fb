import { edgeMetres } from '../../exchange/edgeMetres.ts';
import type { MachineField, Point, ZoneMeasure, TightPiece } from '../../geometry/floorShape.ts';

export type SplitKind = 'machine' | 'strip' | 'tight' | 'rests' | 'cutOff';

/** One part of a zone: who works it, how much of the net floor it is, and why it is not the machine's. */
export interface SplitBlock {
  readonly key: string;
  readonly kind: SplitKind;
  readonly areaM2: number;
  /** Of the net floor of the zone, 0 to 1. */
  readonly share: number;
  readonly tag: string | null;
  /** Whose field it is, and at which place of the cascade it works: 0 is the first. */
  readonly machine: string | null;
  readonly place: number;
  /** Where on the plan it can be asked about; null where there is nothing to show. */
  readonly at: Point | null;
  readonly gap: TightPiece['gap'];
  readonly blockedBy: TightPiece['blockedBy'];
  readonly keptOff?: TightPiece['keptOff'];
  /** Drawn dashed: the machine gets to none of it. */
  readonly barred: boolean;
  readonly edgeM: number;
  /** Of stop lines: their band is strip, their metres are no edge. */
  readonly stopM: number;
}

/** A piece this small, m2, shows as nothing: it goes with what is left in corners. */
const NOTHING_M2 = 0.005;

/** Less of a zone than this is not the machine's in any sense that a person would mean. */
const SLIVER = 0.01;

/**
 * The zone as blocks that add up to its net floor: the machines in their order, then the edge strip, then every tight spot.
 * `tagOf` gives the number of a tight spot; those without one are what a round head leaves in corners, one block together.
 */
export function splitBlocks(zone: ZoneMeasure, tagOf: (piece: TightPiece) => string | null): readonly SplitBlock[] {
  const whole = zone.netM2;
  const share = (areaM2: number): number => (whole > 0 ? Math.min(1, Math.max(0, areaM2 / whole)) : 0);
  const block = (key: string, kind: SplitKind, areaM2: number, more: Partial<SplitBlock>): SplitBlock => ({
    key,
    kind,
    areaM2,
    share: share(areaM2),
    tag: null,
    machine: null,
    place: 0,
    at: null,
    gap: null,
    blockedBy: null,
    barred: false,
    edgeM: 0,
    stopM: 0,
    ...more,
  });

  const blocks: SplitBlock[] = machineFields(zone).map(({ machine, areaM2, blockedBy }, place) => {
    // A zone drawn to the middle of a wall holds a little of the doorway, which a machine reaches from the other side.
    const barred = whole > 0 && areaM2 < (place === 0 ? whole * SLIVER : NOTHING_M2);
    return block(`machine ${machine}`, 'machine', areaM2, {
      machine,
      place,
      barred,
      blockedBy: barred ? (blockedBy ?? null) : null,
    });
  });
  if (zone.stripM2 > 0)
    blocks.push(block('strip', 'strip', zone.stripM2, { edgeM: edgeMetres(zone), stopM: zone.faces.stop }));
  let restsM2 = 0;
  /** Pieces cut off by one passage are one block, however many there are. */
  const cutOffM2 = new Map<string, number>();
  zone.tight.forEach((piece, index) => {
    const tag = tagOf(piece);
    if ((piece.kind === 'gap' && tag === null) || piece.areaM2 < NOTHING_M2) restsM2 += piece.areaM2;
    else if (piece.kind === 'cutOff') {
      const by = cutOffBy(piece);
      cutOffM2.set(by, (cutOffM2.get(by) ?? 0) + piece.areaM2);
    } else {
      blocks.push(
        block(`tight${String(index)}`, 'tight', piece.areaM2, {
          tag,
          at: piece.at,
          gap: piece.gap ?? null,
          blockedBy: piece.blockedBy,
          keptOff: piece.keptOff ?? null,
        }),
      );
    }
  });
  for (const [by, areaM2] of cutOffM2) {
    const piece = zone.tight.find((each) => each.kind === 'cutOff' && cutOffBy(each) === by);
    const { at = null, gap = null, blockedBy = null } = piece ?? {};
    blocks.push(block(`cutOff ${by}`, 'cutOff', areaM2, { at, gap, blockedBy }));
  }
  if (restsM2 > 0) blocks.push(block('rests', 'rests', restsM2, {}));
  return blocks;
}

/** Machines of the zone with their fields. One alone is barred by whatever cuts off the floor it does not get to. */
function machineFields(zone: ZoneMeasure): readonly Pick<MachineField, 'machine' | 'areaM2' | 'blockedBy'>[] {
  const { machine, fieldM2: areaM2, fields = [] } = zone;
  if (!machine) return [];
  if (fields.length > 1) return fields;
  const keptOut = zone.tight.find((piece) => piece.kind === 'cutOff' && piece.blockedBy);
  return [{ machine, areaM2, blockedBy: keptOut?.blockedBy ?? null }];
}

function cutOffBy({ blockedBy, gap }: TightPiece): string {
  if (blockedBy) return `${blockedBy.passage.id} ${blockedBy.what}`;
  return gap ? [...gap.from, ...gap.to].map((mm) => Math.round(mm)).join(' ') : '';
}

/** What the blocks leave of the net floor: nothing, but for rounding. Shown when it is not nothing. */
export function splitRemainderM2(zone: ZoneMeasure, blocks: readonly SplitBlock[]): number {
  return zone.netM2 - blocks.reduce((sum, block) => sum + block.areaM2, 0);
}

/** What is left in corners is nothing to read about where it would read 0.00. */
export function isWorthShowing({ kind, areaM2 }: SplitBlock): boolean {
  return kind !== 'rests' || areaM2 >= NOTHING_M2;
}
