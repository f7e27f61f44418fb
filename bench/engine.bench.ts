import type { FloorShape } from '../src/geometry/floorShape.ts';
import { type Baseline, baselines } from './baselines/baselines.ts';
import { type Edit, EDITS } from './edits.ts';
import { type Answers, difference, ownAnswers } from './engineAnswers.ts';
import { floorEngine } from './floorEngine.ts';
import { memoryUsedMb } from './memoryUsed.ts';
import { type Timing, raced, timed, timingOf } from './timed.ts';
import { type WorldName, world } from './worlds.ts';

/**
 * The geometry engine on three floors, one thread, beside libraries doing the same work: net, field and strip by zone,
 * findings and cracks by zone and part. Read the ratios, which stand in one run: machines differ.
 */
export const name = 'engine';

const WORLDS: readonly WorldName[] = ['W1', 'W2', 'W3'];
const MOVES = 300;
const MOVES_BUDGET_MS = 20_000;

type Print = (line: string) => void;

export async function run(print: Print): Promise<void> {
  const libraries = await baselines();
  const perM2: string[] = [];
  for (const which of WORLDS) {
    const shape = world(which);
    // oxlint-disable-next-line no-await-in-loop
    const { own, netM2 } = await ownTimes(which, shape, print);
    perM2.push(`${which} ${((own.medianMs * 1000) / netM2).toFixed(1)}`);
    editTimes(shape, print);
    if (which === 'W3') printMemory(shape, print);
    compare(which, shape, libraries, print);
  }
  print(`growth, thousandths of a ms a m2: ${perM2.join(', ')}`);
}

async function ownTimes(
  which: WorldName,
  shape: FloorShape,
  print: Print,
): Promise<{ readonly own: Timing; readonly netM2: number }> {
  const { netM2, faults } = floorEngine.full(shape);
  const counts = `${shape.solids.length} columns, ${shape.walls.length} walls, ${shape.findings.length} findings, ${shape.lines.length} cracks, ${shape.zones.length} zones`;
  print(`${which}: ${netM2.toFixed(0)} m2 net, ${counts}; ${faults.length} faults`);
  const own = await timed(() => floorEngine.full(shape), {
    most: 30,
    budgetMs: 6000,
    warmUps: which === 'W1' ? 20 : 1,
  });
  print(`  all numbers           ${shown(own)}`);
  const drawn = await timed(() => floorEngine.drawn(shape));
  print(`  numbers and outlines  ${shown(drawn)}`);
  return { own, netM2 };
}

/** Each edit by itself: the floor measured once, then move after move through one memory. */
function editTimes(shape: FloorShape, print: Print): void {
  for (const edit of EDITS) print(`  ${edit.what.padEnd(20)}  ${shown(dragged(edit, shape))}`);
}

function dragged(edit: Edit, shape: FloorShape): Timing {
  const memory = floorEngine.memory();
  floorEngine.edit(shape, memory);
  // The first moves warm up what full runs never use.
  for (let move = 1; move <= 5; move += 1) floorEngine.edit(edit.moved(shape, move), memory);
  const times: number[] = [];
  const stopAt = performance.now() + MOVES_BUDGET_MS;
  for (let move = 6; times.length < MOVES && performance.now() < stopAt; move += 1) {
    const next = edit.moved(shape, move);
    const start = performance.now();
    floorEngine.edit(next, memory);
    times.push(performance.now() - start);
  }
  return timingOf(times);
}

function printMemory(shape: FloorShape, print: Print): void {
  const before = memoryUsedMb();
  const memory = floorEngine.memory();
  const totals = floorEngine.edit(shape, memory);
  const after = memoryUsedMb();
  print(`  memory kept for edits ${(after - before).toFixed(0)} MB, for ${totals.zones.length} zones`);
}

/** Each library and our engine turn by turn. */
function compare(which: WorldName, shape: FloorShape, libraries: readonly Baseline[], print: Print): void {
  const howOften = { least: which === 'W3' ? 2 : 3, most: 15, budgetMs: 4000, warmUps: which === 'W3' ? 0 : 1 };
  const ours = ownAnswers(floorEngine.full(shape));
  for (const library of libraries) {
    if (which === 'W3' && library.isSlow) {
      print(`  ${library.name}: left out, it takes minutes here`);
      continue;
    }
    let answers: Answers = ours;
    const full = (): void => {
      answers = library.full(shape);
    };
    const { one, other } = raced(() => floorEngine.full(shape), full, howOften);
    const ratio = (other.medianMs / one.medianMs).toFixed(1).padStart(6);
    const ways = library.looksForWaysIn ? '' : ', looks for no way in';
    print(`  ${library.name.padEnd(20)}  ${shown(other)}, ${ratio} times ours${ways}`);
    print(`    ${agreement(ours, answers)}`);
  }
}

/** Strip is left out: a library's band lies along every face, ours only beside floor that a machine works. */
function agreement(ours: Answers, answers: Answers): string {
  const apart = difference(ours, answers);
  const parts = [
    ['net', apart.netM2],
    ['field', apart.fieldM2],
    ['findings', apart.findingNetM2],
    ['cracks', apart.lineNetM],
    ['cracks in field', apart.lineFieldM],
  ] as const;
  return `apart from ours, of the floor: ${parts.map(([what, share]) => `${what} ${Number.isNaN(share) ? 'not told' : share.toExponential(0)}`).join(', ')}`;
}

function shown({ medianMs, p95Ms, runs }: Timing): string {
  const ms = (value: number): string => value.toFixed(value < 10 ? 2 : 1).padStart(8);
  return `median ${ms(medianMs)} ms, p95 ${ms(p95Ms)} ms (${runs} runs)`;
}
