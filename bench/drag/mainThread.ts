import type { CDPSession, Page } from 'playwright';

/** One task of the page's main thread: how long it took, and how much of that it had a processor. */
export interface MainTask {
  readonly wallMs: number;
  readonly cpuMs: number;
}

interface TraceEvent {
  readonly ph: string;
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds. */
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** The browser's own record of its tasks, from now on until `stop`. Time on a processor tells our work from our neighbours'. */
export async function watchMainThread(page: Page): Promise<{ stop(): Promise<MainTask[]> }> {
  const browser = page.context().browser();
  if (!browser) throw new Error('The page has no browser of its own to ask.');
  const session: CDPSession = await browser.newBrowserCDPSession();
  const events: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  const done = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', '__metadata'] },
  });
  return {
    async stop() {
      await session.send('Tracing.end');
      await done;
      await session.detach();
      return mainTasks(events);
    },
  };
}

function mainTasks(events: readonly TraceEvent[]): MainTask[] {
  const mainThreads = new Set(
    events.flatMap(({ ph, name, pid, tid, args }) =>
      ph === 'M' && name === 'thread_name' && args?.name === 'CrRendererMain' ? [`${pid} ${tid}`] : [],
    ),
  );
  return events.flatMap(({ ph, name, pid, tid, dur = 0, tdur = 0 }) =>
    ph === 'X' && name.endsWith('RunTask') && mainThreads.has(`${pid} ${tid}`)
      ? [{ wallMs: dur / 1000, cpuMs: tdur / 1000 }]
      : [],
  );
}
