import { Tabs } from '@base-ui/react/tabs';
import { useEffect, type ReactElement } from 'react';
import css from './JobScreen.module.css';
import { useLayout, type Layout } from '../look/useLayout.ts';
import { measureFloor, useFloor, useJob } from '../plan.ts';
import { goTo, useSession, type Stage } from '../session.ts';
import { CrewStage } from '../crew/CrewStage.tsx';
import { HandoverStage } from '../handover/HandoverStage.tsx';
import { Dock } from '../parts/Dock.tsx';
import { NoticeStrip } from '../parts/NoticeStrip.tsx';
import { PrepLeft } from '../prep/PrepLeft.tsx';
import { PrepRight } from '../prep/PrepRight.tsx';
import { StagePanels } from '../questions/StagePanels.tsx';
import { RatesDialog } from '../rates/RatesDialog.tsx';
import { useBookNotice } from '../rates/useBookNotice.ts';
import { PagesDialog } from '../survey/page/PageSection.tsx';
import { PlanCanvas } from '../survey/PlanCanvas.tsx';
import { PlanSill } from '../survey/PlanSill.tsx';
import { SurveyDocks } from '../survey/SurveyDocks.tsx';
import { TakeoffTable } from '../takeoff/TakeoffTable.tsx';
import { WhyDock } from '../takeoff/WhyDock.tsx';
import { JobDialogs } from './JobDialogs.tsx';
import { ReadOnlyBar } from './ReadOnlyBar.tsx';
import { TopBar } from './TopBar.tsx';
import { ui } from '../../words/uiWords.ts';

/** Crew reads paper and cards: the plan itself steps aside. */
const WITHOUT_PLAN: readonly Stage[] = ['crew'];
const WITHOUT_SILL: readonly Stage[] = ['crew', 'handover'];

function StageDocks({ stage, layout }: { readonly stage: Stage; readonly layout: Layout }): ReactElement {
  const why = useSession((now) => now.why) !== null;
  const whyDock = why && (
    <Dock side="right" label={ui.why} className={css.right}>
      <WhyDock />
    </Dock>
  );
  if (stage === 'survey')
    return why ? (
      <>
        {whyDock}
        <SurveyDocks layout={layout} withoutRight />
      </>
    ) : (
      <SurveyDocks layout={layout} />
    );
  if (stage === 'takeoff') {
    return (
      <>
        <section className={css.table} aria-label={ui.stages.takeoff}>
          <TakeoffTable />
        </section>
        {whyDock}
      </>
    );
  }
  if (stage === 'prep') {
    return (
      <>
        <Dock side="left" label={ui.zones} className={css.left}>
          <PrepLeft legend={layout === 'desk'} />
        </Dock>
        {why ? (
          whyDock
        ) : (
          <Dock side="right" label={ui.zoneSheet} className={css.right}>
            <PrepRight />
          </Dock>
        )}
      </>
    );
  }
  return (
    <section className={stage === 'crew' ? css.whole : css.right} aria-label={ui.stages[stage]}>
      {stage === 'crew' ? <CrewStage /> : <HandoverStage />}
    </section>
  );
}

/** In every stage: also where no plan is drawn, its numbers are those of the floor that is shown. */
function useMeasuredFloor(): void {
  const floor = useFloor()?.id ?? null;
  useEffect(() => {
    if (floor) measureFloor(floor);
  }, [floor]);
}

/** One job on the screen: the bar, the stage's docks about the plan, and what it adds up to. */
export function JobScreen(): ReactElement {
  const layout = useLayout();
  const stage = useSession((now) => now.stage);
  const why = useSession((now) => now.why) !== null;
  const panel = useSession((now) => now.panel);
  const job = useJob();
  useMeasuredFloor();
  useBookNotice();
  return (
    <Tabs.Root value={stage} onValueChange={(next: Stage) => goTo(next)} className={css.screen}>
      <TopBar layout={layout} />
      <div>
        <ReadOnlyBar />
        <NoticeStrip />
      </div>
      <main className={css.main}>
        <h1 className="forReaders">{ui.jobHeading(job?.name ?? '', ui.stages[stage])}</h1>
        <Tabs.Panel
          value={stage}
          tabIndex={-1}
          className={css.stage}
          data-stage={stage}
          data-layout={layout}
          data-why={why ? 'open' : undefined}
        >
          {!WITHOUT_PLAN.includes(stage) && <PlanCanvas className={css.canvas} />}
          <StageDocks stage={stage} layout={layout} />
          {!WITHOUT_SILL.includes(stage) && <PlanSill className={css.sill} stage={stage} layout={layout} />}
        </Tabs.Panel>
      </main>
      <JobDialogs />
      {panel === 'rates' && <RatesDialog />}
      {panel === 'planPage' && <PagesDialog />}
      <StagePanels />
    </Tabs.Root>
  );
}
