import type { ReactElement } from 'react';
import css from './PlanCanvas.module.css';
import { useLayout } from '../look/useLayout.ts';
import { onFloor } from '../../model/doc.ts';
import { FileButton } from '../jobs/FileButton.tsx';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useDoc, useFloor } from '../plan.ts';
import { arm, useSession } from '../session.ts';
import { jobText } from '../../words/jobWords.ts';
import { floorCount } from './floorItems.ts';
import { addPage, PAGE_TYPES } from './page/addPage.ts';

/** A floor with nothing on it asks the one question that decides how to begin. */
export function EmptyFloor(): ReactElement | null {
  const floor = useFloor();
  const tool = useSession((now) => now.tool);
  // Who stands in the room with a phone has a tape; who sits at a desk has a plan.
  const layout = useLayout();
  const onPhone = layout === 'phone' || layout === 'phoneWide';
  const empty = useDoc(
    (doc) => floor !== null && onFloor(doc, 'page', floor.id).length === 0 && floorCount(doc, floor.id) === 0,
  );
  if (!empty || tool !== 'pick') return null;
  const plan = (
    <FileButton
      key="plan"
      main={!onPhone}
      size="site"
      label={jobText.havePlan}
      accept={PAGE_TYPES}
      onFile={(file) => void addPage(file)}
    />
  );
  const sketch = (
    <Button key="sketch" kind={onPhone ? 'main' : 'plain'} onClick={() => arm('slab')}>
      {jobText.sketch}
    </Button>
  );
  return (
    <div className={css.question}>
      <EmptyState title={jobText.emptyTitle} sentence={jobText.emptySays}>
        {onPhone ? [sketch, plan] : [plan, sketch]}
      </EmptyState>
    </div>
  );
}
