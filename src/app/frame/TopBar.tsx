import { Tabs } from '@base-ui/react/tabs';
import type { ReactElement } from 'react';
import css from './TopBar.module.css';
import { cx } from '../look/cx.ts';
import type { Layout } from '../look/useLayout.ts';
import { redo, undo, useOpen, useSteps } from '../plan.ts';
import { STAGES, useSession } from '../session.ts';
import { Icon } from '../parts/Icon.tsx';
import { askFit } from '../survey/fit.ts';
import { commandLabels } from '../../words/handWords.ts';
import { ui } from '../../words/uiWords.ts';
import { JobMenu } from './JobMenu.tsx';
import { Mark } from './Mark.tsx';
import { PhoneBar } from './PhoneBar.tsx';

/** Undo and redo name what they would take back; with nothing to take they are dashed in meaning, not gone. */
export function StepButton({ which, bare }: { readonly which: 'undo' | 'redo'; readonly bare: boolean }): ReactElement {
  const label = useSteps()[which];
  const readOnly = useOpen()?.readOnly ?? null;
  const off = label === null || readOnly !== null;
  const what = label === null ? ui[which] : ui[`${which}What`](commandLabels[label] ?? label);
  return (
    <button
      type="button"
      className={cx(css.button, off && css.off)}
      aria-disabled={off ? true : undefined}
      aria-label={what}
      title={what}
      onClick={which === 'undo' ? undo : redo}
    >
      <Icon name={which} />
      {!bare && <span>{ui[which]}</span>}
    </button>
  );
}

/** Where am I (job, floor, copy on file), the five stages, undo and redo. */
export function TopBar({ layout }: { readonly layout: Layout }): ReactElement {
  const stage = useSession((now) => now.stage);
  if (layout === 'phone' || layout === 'phoneWide') return <PhoneBar />;
  const desk = layout === 'desk';
  return (
    <header className={css.top}>
      <div className={css.brand}>
        <Mark />
        {desk && <span>{ui.app}</span>}
      </div>
      <JobMenu />
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
