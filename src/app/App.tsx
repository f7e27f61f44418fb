import { useEffect, type ReactElement } from 'react';
import { useThemeOnPage } from './look/theme.ts';
import { Crash } from './frame/Crash.tsx';
import { JobScreen } from './frame/JobScreen.tsx';
import { JobsScreen } from './jobs/JobsScreen.tsx';
import { registerOffline } from './offline/registerOffline.ts';
import { useOpen } from './plan.ts';
import { say } from './session.ts';
import { ui } from '../words/uiWords.ts';

function useOffline(): void {
  useEffect(() => {
    // A development server has no worker file, and would serve the page in its place.
    if (import.meta.env.DEV) return;
    void registerOffline({
      onNewVersion: (useIt) => say(ui.newVersion, { words: ui.useIt, run: useIt }),
      onReplaced: () => say(ui.replaced, { words: ui.reload, run: () => location.reload() }),
    });
  }, []);
}

/** The job list, or the job that is open. */
export function App(): ReactElement {
  useThemeOnPage();
  useOffline();
  const open = useOpen();
  return <Crash>{open ? <JobScreen key={open.id} /> : <JobsScreen />}</Crash>;
}
