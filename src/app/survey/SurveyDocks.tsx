import type { ReactElement } from 'react';
import css from './SurveyDocks.module.css';
import { onFloor } from '../../model/doc.ts';
import { cx } from '../look/cx.ts';
import grid from '../frame/JobScreen.module.css';
import type { Layout } from '../look/useLayout.ts';
import { Dock, DockHead } from '../parts/Dock.tsx';
import { useDoc, useFloor } from '../plan.ts';
import { useSession } from '../session.ts';
import { surveyText } from '../../words/surveyWords.ts';
import { EntryBar } from './EntryBar.tsx';
import { floorCount } from './floorItems.ts';
import { useHand } from './hand.ts';
import { ItemList } from './ItemList.tsx';
import { ItemSheet } from './ItemSheet.tsx';
import { PageSection } from './page/PageSection.tsx';
import { TruePanel } from './page/TruePanel.tsx';
import { ToolsDock } from './ToolsDock.tsx';

function useCount(): number {
  const floor = useFloor();
  return useDoc((doc) => (floor ? floorCount(doc, floor.id) : 0));
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

/** What the hand is at: a line being drawn, else the picked item, else what the tool draws next, else the page. */
function useSheet(): { readonly name: string; readonly sheet: ReactElement } {
  const tool = useSession((now) => now.tool);
  const picked = useSession((now) => now.picked);
  // What was picked may be gone with an undo.
  const anyPicked = useDoc((doc) => picked.some((id) => doc.has(id)));
  const drawing = useHand((now) => (now.draft?.from ?? null) !== null);
  if (tool !== 'pick' && (drawing || !anyPicked)) return { name: `entry ${tool}`, sheet: <EntryBar inline={false} /> };
  if (anyPicked) return { name: 'picked', sheet: <ItemSheet withDone={tool !== 'pick'} /> };
  return { name: 'page', sheet: <PageSection /> };
}

/** Something is drawn and no page lies under it: then nobody looks for one. */
function useSketched(): boolean {
  const floor = useFloor();
  const count = useCount();
  const pages = useDoc((doc) => (floor ? onFloor(doc, 'page', floor.id).length : 0));
  return count > 0 && pages === 0;
}

/** Tablet: sheet and list side by side under the canvas. Phone: one of them; with nothing in hand the list. */
function BottomDock({ layout }: { readonly layout: Layout }): ReactElement {
  const { name, sheet } = useSheet();
  const sketched = useSketched();
  if (layout === 'tablet') {
    return (
      <Dock side="bottom" label={surveyText.items} className={`${grid.right} ${css.bottom}`}>
        <div key={name} className={css.sheet}>
          {sheet}
        </div>
        <div className={css.side}>
          <ItemList />
        </div>
      </Dock>
    );
  }
  const phone = layout === 'phone';
  return (
    <Dock
      key={name}
      side={phone ? 'bottom' : 'right'}
      label={surveyText.items}
      className={cx(grid.right, css.scrolls, phone && css.phone)}
    >
      {name === 'page' && sketched && <ItemList />}
      {sheet}
      {name === 'page' && !sketched && <ItemList />}
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
          side={layout === 'phone' || layout === 'tablet' ? 'bottom' : 'right'}
          label={surveyText.trueTitle}
          className={`${grid.right} ${layout === 'phone' || layout === 'tablet' ? css.phone : ''}`}
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
