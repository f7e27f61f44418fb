export interface Timing {
  readonly medianMs: number;
  /** 95 of 100 runs were no slower; of few runs the slowest. */
  readonly p95Ms: number;
  readonly fastestMs: number;
  readonly runs: number;
}

/** How often to run: until the most runs are done or the time is up, but never fewer than the least. */
export interface HowOften {
  readonly least: number;
  readonly most: number;
  readonly budgetMs: number;
  /** Runs before that, which do not count. */
  readonly warmUps: number;
}

const USUAL: HowOften = { least: 3, most: 15, budgetMs: 4000, warmUps: 1 };

/** Times of many runs: up to 15 after a warm-up, or as many (at least three) as fit in four seconds, unless told otherwise. */
export async function timed(run: () => unknown, howOften: Partial<HowOften> = {}): Promise<Timing> {
  const { least, most, budgetMs, warmUps } = { ...USUAL, ...howOften };
  for (let i = 0; i < warmUps; i += 1) {
    // One at a time: two at once would slow each other.
    // oxlint-disable-next-line no-await-in-loop
    await run();
  }
  const times: number[] = [];
  const stopAt = performance.now() + budgetMs;
  while (times.length < most && (times.length < least || performance.now() < stopAt)) {
    const start = performance.now();
    // oxlint-disable-next-line no-await-in-loop
    await run();
    times.push(performance.now() - start);
  }
  return timingOf(times);
}

/** Two things timed turn by turn, so that whatever else slows the machine slows both. */
export function raced(
  one: () => unknown,
  other: () => unknown,
  howOften: HowOften,
): { readonly one: Timing; readonly other: Timing } {
  const times = { one: [] as number[], other: [] as number[] };
  const stopAt = performance.now() + howOften.budgetMs;
  for (let turn = -howOften.warmUps; turn < howOften.most; turn += 1) {
    if (turn >= howOften.least && performance.now() > stopAt) break;
    const [oneMs, otherMs] = [duration(one), duration(other)];
    if (turn < 0) continue;
    times.one.push(oneMs);
    times.other.push(otherMs);
  }
  return { one: timingOf(times.one), other: timingOf(times.other) };
}

function duration(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

export function timingOf(times: readonly number[]): Timing {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? NaN;
  return { medianMs: at(0.5), p95Ms: at(0.95), fastestMs: at(0), runs: sorted.length };
}
