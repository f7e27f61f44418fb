import type { ReactElement } from 'react';
import { EstimateList } from './EstimateList.tsx';
import { EstimateView } from './EstimateView.tsx';
import { IssueDialog } from './IssueDialog.tsx';
import { useDoc } from '../plan.ts';
import { useSession } from '../session.ts';
import { useHasMoney } from '../takeoff/useHasMoney.ts';
import type { RecordId } from '../../model/cell.ts';
import { recordOf } from '../../model/doc.ts';

/** Dialogs about estimates: issue one, see them all, see one. None of them in a crew copy. */
export function EstimatePanels(): ReactElement | null {
  const panel = useSession((now) => now.panel);
  const hasMoney = useHasMoney();
  const id = panel?.startsWith('estimate:') ? (panel as RecordId) : null;
  const estimate = useDoc((doc) => recordOf(doc, 'estimate', id));
  if (!hasMoney) return null;
  if (panel === 'issueEstimate') return <IssueDialog />;
  if (panel === 'estimates') return <EstimateList />;
  return estimate ? <EstimateView estimate={estimate} /> : null;
}
