const RUNS = 15;
const BUDGET_MS = 4000;

/** Median and fastest of up to 15 runs after a warm-up, or of as many (at least three) as fit in four seconds. */
export async function timed(
  run: () => unknown,
): Promise<{ readonly medianMs: number; readonly fastestMs: number; readonly runs: number }> {
  await run();
  const times: number[] = [];
  const stopAt = performance.now() + BUDGET_MS;
  while (times.length < RUNS && (times.length < 3 || performance.now() < stopAt)) {
    const start = performance.now();
    // oxlint-disable-next-line no-await-in-loop
    await run();
    times.push(performance.now() - start);
  }
  const sorted = times.toSorted((a, b) => a - b);
  return { medianMs: sorted[Math.floor(sorted.length / 2)] ?? NaN, fastestMs: sorted[0] ?? NaN, runs: sorted.length };
}
