import { Menu } from '@base-ui/react/menu';
import type { ReactElement } from 'react';
import css from './JobMenu.module.css';
import menu from './Menu.module.css';
import { recordsOf } from '../../model/doc.ts';
import type { RecordId } from '../../model/cell.ts';
import { redo, useDoc, useFloor, useJob, useSteps, useUnits } from '../plan.ts';
import { openPanel, setTheme, setUnits, showFloor, useSession, type Theme, type Units } from '../session.ts';
import { overlayHome } from '../look/overlayHome.ts';
import { Icon } from '../parts/Icon.tsx';
import { saveCrewCopy, saveFile, useCopyLine } from '../jobs/jobActions.ts';
import { closeJob } from '../jobs/kept.ts';
import { useHasMoney } from '../takeoff/useHasMoney.ts';
import { estimateText } from '../../words/estimateWords.ts';
import { ui } from '../../words/uiWords.ts';

const THEMES: readonly Theme[] = ['device', 'light', 'dark', 'daylight'];

function Floors(): ReactElement {
  const floor = useFloor();
  const floors = useDoc((doc) => recordsOf(doc, 'floor'));
  return (
    <>
      <Menu.RadioGroup value={floor?.id ?? null} onValueChange={(next: RecordId) => showFloor(next)}>
        <Menu.Group>
          <Menu.GroupLabel className={menu.group}>{ui.menu.floors}</Menu.GroupLabel>
          {floors.map((one) => (
            <Menu.RadioItem key={one.id} value={one.id} className={menu.item}>
              {one.name}
            </Menu.RadioItem>
          ))}
        </Menu.Group>
      </Menu.RadioGroup>
      <Menu.Item className={menu.item} onClick={() => openPanel('renameFloor')}>
        {ui.menu.renameFloor}
      </Menu.Item>
      <Menu.Item className={menu.item} onClick={() => openPanel('addFloor')}>
        {ui.menu.addFloor}
      </Menu.Item>
    </>
  );
}

function DeviceChoices(): ReactElement {
  const theme = useSession((now) => now.theme);
  const units = useUnits();
  return (
    <>
      <Menu.RadioGroup value={units} onValueChange={(next: Units) => setUnits(next)}>
        <Menu.Group>
          <Menu.GroupLabel className={menu.group}>{ui.menu.units}</Menu.GroupLabel>
          {(['metric', 'imperial'] as const).map((one) => (
            <Menu.RadioItem key={one} value={one} className={menu.item}>
              {ui.menu[one]}
            </Menu.RadioItem>
          ))}
        </Menu.Group>
      </Menu.RadioGroup>
      <Menu.RadioGroup value={theme} onValueChange={(next: Theme) => setTheme(next)}>
        <Menu.Group>
          <Menu.GroupLabel className={menu.group}>{ui.menu.theme}</Menu.GroupLabel>
          {THEMES.map((one) => (
            <Menu.RadioItem key={one} value={one} className={menu.item}>
              {ui.menu.themes[one]}
            </Menu.RadioItem>
          ))}
        </Menu.Group>
      </Menu.RadioGroup>
    </>
  );
}

export function JobMenuItems({ withRedo = false }: { readonly withRedo?: boolean }): ReactElement {
  const steps = useSteps();
  const hasMoney = useHasMoney();
  return (
    <>
      {withRedo && (
        <Menu.Item className={menu.item} disabled={steps.redo === null} onClick={redo}>
          {ui.redo}
        </Menu.Item>
      )}
      <Menu.Item className={menu.item} onClick={saveFile}>
        {ui.menu.saveFile}
      </Menu.Item>
      <Menu.Item className={menu.item} onClick={saveCrewCopy}>
        {ui.menu.saveCrewCopy}
        <small>{ui.menu.saveCrewCopyMore}</small>
      </Menu.Item>
      <Menu.Separator className={menu.rule} />
      <Menu.Item className={menu.item} onClick={() => openPanel('planPage')}>
        {ui.menu.planPage}
      </Menu.Item>
      {hasMoney && (
        <Menu.Item className={menu.item} onClick={() => openPanel('rates')}>
          {ui.menu.rates}
        </Menu.Item>
      )}
      {hasMoney && (
        <Menu.Item className={menu.item} onClick={() => openPanel('estimates')}>
          {estimateText.list}
        </Menu.Item>
      )}
      <Menu.Item className={menu.item} onClick={() => openPanel('rename')}>
        {ui.menu.rename}
      </Menu.Item>
      <Menu.Separator className={menu.rule} />
      <Floors />
      <Menu.Separator className={menu.rule} />
      <DeviceChoices />
      <Menu.Separator className={menu.rule} />
      <Menu.Item className={menu.item} onClick={() => void closeJob()}>
        {ui.menu.jobs}
      </Menu.Item>
    </>
  );
}

/** Job, floor, and where its last copy is; pressed, everything that is done to the whole job. */
export function JobMenu(): ReactElement {
  const job = useJob();
  const floor = useFloor();
  const copy = useCopyLine();
  return (
    <Menu.Root>
      <Menu.Trigger className={css.job}>
        <b>
          <span>{job && floor ? ui.jobAndFloor(job.name, floor.name) : job?.name}</span>
          <Icon name="down" small />
        </b>
        <span className={css.copy}>{job?.invented ? `${ui.invented}. ${copy}` : copy}</span>
      </Menu.Trigger>
      <Menu.Portal container={overlayHome()}>
        <Menu.Positioner className={menu.positioner} align="start">
          <Menu.Popup className={menu.popup} aria-label={ui.jobMenu}>
            <JobMenuItems />
          </Menu.Popup>
        </Menu.Positioner>
      </Menu.Portal>
    </Menu.Root>
  );
}
