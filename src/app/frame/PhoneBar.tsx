import { Menu } from '@base-ui/react/menu';
import type { ReactElement } from 'react';
import css from './PhoneBar.module.css';
import bar from './TopBar.module.css';
import menu from './Menu.module.css';
import { useJob } from '../plan.ts';
import { goTo, STAGES, useSession } from '../session.ts';
import { overlayHome } from '../look/overlayHome.ts';
import { Icon } from '../parts/Icon.tsx';
import { closeJob } from '../jobs/kept.ts';
import { askFit } from '../survey/fit.ts';
import { ui } from '../../words/uiWords.ts';
import { JobMenuItems } from './JobMenu.tsx';
import { StepButton } from './StepButton.tsx';

function StageMenu(): ReactElement {
  const stage = useSession((now) => now.stage);
  const job = useJob();
  return (
    <Menu.Root>
      <Menu.Trigger className={css.stage}>
        <b>
          {ui.stages[stage]}
          <Icon name="down" small />
        </b>
        <span>{job?.name}</span>
        <span className="forReaders">: {ui.chooseStage}</span>
      </Menu.Trigger>
      <Menu.Portal container={overlayHome()}>
        <Menu.Positioner className={menu.positioner} align="start">
          <Menu.Popup className={menu.popup}>
            <Menu.RadioGroup value={stage} onValueChange={(next: (typeof STAGES)[number]) => goTo(next)}>
              {STAGES.map((one) => (
                <Menu.RadioItem key={one} value={one} className={menu.item} closeOnClick>
                  {ui.stages[one]}
                </Menu.RadioItem>
              ))}
            </Menu.RadioGroup>
          </Menu.Popup>
        </Menu.Positioner>
      </Menu.Portal>
    </Menu.Root>
  );
}

export function PhoneBar(): ReactElement {
  return (
    <header className={css.top}>
      <button type="button" className={css.back} onClick={() => void closeJob()} aria-label={ui.backToJobs}>
        <Icon name="back" />
      </button>
      <StageMenu />
      <StepButton which="undo" bare />
      <Menu.Root>
        <Menu.Trigger className={bar.button} aria-label={ui.more}>
          <Icon name="more" />
        </Menu.Trigger>
        <Menu.Portal container={overlayHome()}>
          <Menu.Positioner className={menu.positioner} align="end">
            <Menu.Popup className={menu.popup}>
              <Menu.Item className={menu.item} onClick={askFit}>
                {ui.fit}
              </Menu.Item>
              <JobMenuItems withRedo />
            </Menu.Popup>
          </Menu.Positioner>
        </Menu.Portal>
      </Menu.Root>
    </header>
  );
}
