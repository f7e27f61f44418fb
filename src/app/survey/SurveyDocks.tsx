import type { ReactElement } from 'react';
import css from './SurveyDocks.module.css';
import grid from '../frame/JobScreen.module.css';
import type { Layout } from '../look/useLayout.ts';
import { Dock, DockHead } from '../parts/Dock.tsx';
import { useDoc, useFloor } from '../plan.ts';
import { useSession } from '../session.ts';
import { surveyText } from '../../words/surveyWords.ts';
import { EntryBar } from './EntryBar.tsx';
import { floorItems } from './floorItems.ts';
import { ItemList } from './ItemList.tsx';
import { ItemSheet } from './ItemSheet.tsx';
import { PageSection } from './page/PageSection.tsx';
import { TruePanel } from './page/TruePanel.tsx';
import { ToolsDock } from './ToolsDock.tsx';

function useCount(): number {
  const floor = useFloor();
  return useDoc((doc) => (floor ? floorItems(doc, floor.id, 'metric').length : 0));
}

/** Desk: the list, then the picked item or the plan page. */
function DeskRight(): ReactElement {
  const count = useCount();
  const anyPicked = useSession((now) => now.picked.length > 0);
  return (
    <Dock side="right" label={surveyText.items} className={`${grid.right} ${css.split}`}>
      <DockHead right={count}>{surveyText.items}</DockHead>
      <div className={css.list}>
        <ItemList />
      </div>
      <div className={css.below}>{anyPicked ? <ItemSheet /> : <PageSection />}</div>
    </Dock>
  );
}

/** Tablet: sheet and list side by side under the canvas. Phone: the sheet, else what the tool asks, else the list. */
function BottomDock({ layout }: { readonly layout: Layout }): ReactElement {
  const tool = useSession((now) => now.tool);
  const anyPicked = useSession((now) => now.picked.length > 0);
  const sheet =
    tool !== 'pick' && !anyPicked ? <EntryBar inline={false} /> : anyPicked ? <ItemSheet /> : <PageSection />;
  if (layout === 'tablet') {
    return (
      <Dock side="bottom" label={surveyText.items} className={`${grid.right} ${css.bottom}`}>
        <div className={css.sheet}>
          {tool !== 'pick' && anyPicked && <EntryBar inline={false} />}
          {sheet}
        </div>
        <div className={css.side}>
          <ItemList />
        </div>
      </Dock>
    );
  }
  return (
    <Dock
      side={layout === 'phone' ? 'bottom' : 'right'}
      label={surveyText.items}
      className={`${grid.right} ${css.phone}`}
    >
      {tool !== 'pick' && anyPicked && <EntryBar inline={false} />}
      {sheet}
      {tool === 'pick' && !anyPicked && <ItemList />}
    </Dock>
  );
}

/** What stands round the plan in Survey: tools, what is there, what is typed. While a page is trued, its panel instead. */
export function SurveyDocks({
  layout,
  withoutRight = false,
}: {
  readonly layout: Layout;
  readonly withoutRight?: boolean;
}): ReactElement {
  const truing = useSession((now) => now.truing);
  const desk = layout === 'desk';
  if (truing) {
    return (
      <>
        <ToolsDock layout={layout} className={grid.left} />
        <Dock
          side={desk ? 'right' : 'bottom'}
          label={surveyText.trueTitle}
          className={`${grid.right} ${desk ? '' : css.phone}`}
        >
          <TruePanel page={truing} />
        </Dock>
      </>
    );
  }
  return (
    <>
      <ToolsDock layout={layout} className={grid.left} />
      {desk && <EntryBar inline className={grid.entry} />}
      {!withoutRight && (desk ? <DeskRight /> : <BottomDock layout={layout} />)}
    </>
  );
}
