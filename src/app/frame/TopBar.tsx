import { Tabs } from '@base-ui/react/tabs';
import type { ReactElement } from 'react';
import css from './TopBar.module.css';
import type { Layout } from '../look/useLayout.ts';
import { STAGES, useSession } from '../session.ts';
import { askFit } from '../survey/fit.ts';
import { ui } from '../../words/uiWords.ts';
import { JobMenu } from './JobMenu.tsx';
import { Mark } from './Mark.tsx';
import { PhoneBar } from './PhoneBar.tsx';
import { StepButton } from './StepButton.tsx';

/** Where am I (job, floor, copy on file), the five stages, undo and redo. */
export function TopBar({ layout }: { readonly layout: Layout }): ReactElement {
  const stage = useSession((now) => now.stage);
  if (layout === 'phone' || layout === 'phoneWide') return <PhoneBar />;
  const desk = layout === 'desk';
  return (
    <header className={css.top}>
      <div className={css.left}>
        <div className={css.brand}>
          <Mark />
          {desk && <span>{ui.app}</span>}
        </div>
        <JobMenu />
      </div>
      <Tabs.List className={css.stages} aria-label={ui.stagesLabel}>
        {STAGES.map((one) => (
          <Tabs.Tab key={one} value={one} className={css.stage}>
            {ui.stages[one]}
          </Tabs.Tab>
        ))}
      </Tabs.List>
      <div className={css.right}>
        {desk && stage !== 'crew' && (
          <button type="button" className={css.button} onClick={askFit}>
            {ui.fit}
          </button>
        )}
        <StepButton which="undo" bare={!desk} />
        <StepButton which="redo" bare={!desk} />
      </div>
    </header>
  );
}
