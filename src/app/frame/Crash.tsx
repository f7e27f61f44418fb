import { Component, type ErrorInfo, type ReactNode } from 'react';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { saveFile } from '../jobs/jobActions.ts';
import { useKept } from '../jobs/kept.ts';
import { ui } from '../../words/uiWords.ts';

/**
 * The one class of the app: React catches faults of drawing in classes only. The job is kept as it changes,
 * so nothing is lost by loading the page again.
 */
export class Crash extends Component<{ readonly children: ReactNode }, { readonly fault: Error | null }> {
  override state: { readonly fault: Error | null } = { fault: null };

  static getDerivedStateFromError(fault: Error): { readonly fault: Error } {
    return { fault };
  }

  override componentDidCatch(fault: Error, info: ErrorInfo): void {
    console.error(fault, info.componentStack);
  }

  override render(): ReactNode {
    if (!this.state.fault) return this.props.children;
    return (
      <EmptyState title={ui.app} sentence={ui.crash}>
        {useKept.getState().save.at === 'notSaved' && <Button onClick={saveFile}>{ui.saveNow}</Button>}
        <Button kind="main" onClick={() => location.reload()}>
          {ui.reload}
        </Button>
      </EmptyState>
    );
  }
}
