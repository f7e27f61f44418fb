import type { FloorShape, MachineShape } from '../../src/geometry/floorShape.ts';
import { type Oracle, type PartAreas, beyondOracles } from '../support/oracles/oracle.ts';
import { clipperTsOracle, clipperWasmOracle, geosOracle } from '../support/oracles/oracles.ts';
import { type Numbers, measured } from './engine.ts';
import { hasHairs } from './hairs.ts';
import { slackOf, sum } from './laws.ts';
import { withoutRefused } from './slowAreas.ts';
import { ORACLE_ARC_SHARE } from './tolerances.ts';

/*
 * Other engines vote on net floor and field, whole and zone by zone; and no more may be told as covered by a head than
 * they find (less may be: along faces that are not worked floor counts as hand area, covered or not). None of them is
 * without faults on such plans, so ours is wrong only where all of them agree on something else; where they do not
 * agree, or throw, that is counted and says nothing. They share no code: GEOS, and Clipper, compiled to WebAssembly for
 * most plans, which is quicker, and in TypeScript for the careful look.
 */
export interface Verdict {
  readonly faults: readonly string[];
  /** Answers on which the oracles do not agree. */
  readonly disagreements: number;
}

/**
 * Oracles have chords for arcs. Where a band is almost touched, a small error of the chord is a large one of what the head
 * covers: what quick oracles find wrong is asked again of careful ones.
 */
export interface Jury {
  readonly quick: readonly Oracle[];
  readonly careful: readonly Oracle[];
  /** The last word on what the careful ones find wrong: the chords of a head of some metres are coarse even for them. */
  readonly finest: readonly Oracle[];
}

/** Segments a circle; sectors have their true area. With fewer the quick ones are wrong so often that the careful ones take most of the time. */
const QUICK_SEGMENTS = 128;
const CAREFUL_SEGMENTS = 1024;
const FINEST_SEGMENTS = 4096;

export async function loadJury(): Promise<Jury> {
  return {
    quick: [await geosOracle(QUICK_SEGMENTS), await clipperWasmOracle(QUICK_SEGMENTS)],
    careful: [await geosOracle(CAREFUL_SEGMENTS), clipperTsOracle(CAREFUL_SEGMENTS)],
    finest: [await geosOracle(FINEST_SEGMENTS), await clipperWasmOracle(FINEST_SEGMENTS)],
  };
}

/** What oracles can answer of a plan: its first machine alone, the same clearance all round, a body no wider than the head needs, every passage open. */
export function plainOf(shape: FloorShape, widerMm: number): FloorShape {
  const [first] = shape.machines;
  if (!first) return shape;
  const clear = first.clearanceMm.wall;
  const headRadiusMm = first.headRadiusMm + widerMm;
  const machine: MachineShape = {
    ...first,
    headRadiusMm,
    clearanceMm: { wall: clear, obstruction: clear, drop: clear, stop: clear },
    passageMm: 2 * (headRadiusMm + clear),
  };
  const { restFollowedBy: _followers, ...rest } = shape;
  return {
    ...rest,
    slabs: shape.slabs.map((slab) => ({ ...slab, passages: slab.ring.map(() => null) })),
    walls: shape.walls.map((wall) => ({
      ...wall,
      gaps: wall.gaps.map((gap) => ({ ...gap, passage: { ...gap.passage, widthMm: 1e6, heightMm: null } })),
    })),
    zones: shape.zones.map(({ id, ring }) => ({ id, ring, machine: machine.id })),
    restMachine: machine.id,
    machines: [machine],
  };
}

/**
 * A neck of just the width needed passes for us and has no floor for the middle of the head in a library: so machines
 * are taken off the lattice of the plans, and what is wrong must be wrong for one a little wider too.
 */
const WIDER_MM = 1.37;
const EVEN_WIDER_MM = 2.93;

export function oracleVerdict(shape: FloorShape, faults: Numbers['faults'], { quick, careful, finest }: Jury): Verdict {
  const sound = withoutRefused(shape, faults);
  const first = verdictOf(plainOf(sound, WIDER_MM), quick);
  if (first.faults.length === 0) return first;
  const second = verdictOf(plainOf(sound, EVEN_WIDER_MM), careful);
  if (second.faults.length === 0) return second;
  const third = verdictOf(plainOf(sound, WIDER_MM), careful);
  return third.faults.length === 0 ? third : verdictOf(plainOf(sound, WIDER_MM), finest);
}

const NONE: Verdict = { faults: [], disagreements: 0 };

function verdictOf(shape: FloorShape, oracles: readonly Oracle[]): Verdict {
  if (oracles.length === 0 || beyondOracles(shape) !== null) return NONE;
  const ours = measured(shape);
  const slackM2 = slackOf(ours, ORACLE_ARC_SHARE);
  const theirs = oracles.map((oracle) => answersOf(oracle, shape));
  const faults: string[] = [];
  let disagreements = 0;
  const isHairy = hasHairs(shape);
  for (const [name, our] of ourAnswers(ours)) {
    if (isHairy && !name.endsWith('net')) continue;
    const votes = theirs.map((answers) => answers?.get(name) ?? Number.NaN);
    const [vote = Number.NaN] = votes;
    if (!votes.every((other) => Math.abs(other - vote) <= slackM2)) disagreements += 1;
    else if (name.endsWith('covered') ? our > vote + slackM2 : Math.abs(vote - our) > slackM2)
      faults.push(`${name}: ${our}, oracles ${votes.join(' and ')}`);
  }
  return { faults, disagreements };
}

type Answers = ReadonlyMap<string, number>;

function answersOf(oracle: Oracle, shape: FloorShape): Answers | null {
  try {
    const { zones, ...whole } = oracle.answer(shape);
    return new Map([...named('floor', whole), ...Object.entries(zones).flatMap(([id, parts]) => named(id, parts))]);
  } catch {
    return null;
  }
}

function named(of: string, { netM2, rawFieldM2, fieldM2 }: PartAreas): [string, number][] {
  return [
    [`${of} net`, netM2],
    [`${of} covered`, rawFieldM2],
    [`${of} field`, fieldM2],
  ];
}

function ourAnswers({ netM2, zones }: Numbers): [string, number][] {
  const partsOf = (list: Numbers['zones']): [fieldM2: number, lapM2: number | undefined] => [
    sum(list, (zone) => zone.fieldM2),
    list.every((zone) => zone.lapM2 !== undefined) ? sum(list, (zone) => zone.lapM2 ?? 0) : undefined,
  ];
  const answers = (of: string, net: number, list: Numbers['zones']): [string, number][] => {
    const [fieldM2, lapM2] = partsOf(list);
    return [
      [`${of} net`, net],
      [`${of} field`, fieldM2],
      ...(lapM2 === undefined ? [] : ([[`${of} covered`, fieldM2 + lapM2]] as [string, number][])),
    ];
  };
  return [...answers('floor', netM2, zones), ...zones.flatMap((zone) => answers(zone.id, zone.netM2, [zone]))];
}
