import { useState, type ReactElement } from 'react';
import css from './ToolsDock.module.css';
import { cx } from '../look/cx.ts';
import type { Layout } from '../look/useLayout.ts';
import { ToolDrawing } from '../parts/ToolDrawing.tsx';
import { arm, useSession } from '../session.ts';
import type { ToolDrawingName } from '../../canvas/paint/toolDrawings.ts';
import { letterOf } from '../../canvas/input/keys.ts';
import { groupWords, surveyText, toolWords } from '../../words/surveyWords.ts';
import { GROUP_DRAWING, groupOf, TOOL_GROUPS, type GroupName } from './toolGroups.ts';

function ToolRow({ tool, onArm }: { readonly tool: string; readonly onArm?: () => void }): ReactElement {
  const armed = useSession((now) => now.tool === tool);
  const letter = tool === 'pick' ? 'Esc' : letterOf(tool)?.toUpperCase();
  return (
    <button
      type="button"
      className={cx(css.tool, armed && css.on)}
      aria-pressed={armed}
      aria-keyshortcuts={letter === 'Esc' ? 'Escape' : letter}
      onClick={() => {
        arm(tool);
        onArm?.();
      }}
    >
      <ToolDrawing of={tool as ToolDrawingName} />
      <span>{toolWords[tool]}</span>
      {letter && (
        <kbd className={css.letter} aria-hidden="true">
          {letter}
        </kbd>
      )}
    </button>
  );
}

function DeskTools({ className }: { readonly className?: string | undefined }): ReactElement {
  return (
    <nav className={cx(css.desk, className)} aria-label={surveyText.tools}>
      <ToolRow tool="pick" />
      {TOOL_GROUPS.map((group) => (
        <div key={group.name} role="group" aria-label={groupWords[group.name]}>
          <div className={css.groupName} aria-hidden="true">
            {groupWords[group.name]}
          </div>
          {group.tools.map((tool) => (
            <ToolRow key={tool} tool={tool} />
          ))}
        </div>
      ))}
    </nav>
  );
}

/** Tablet and phone: one target a group. A press arms the group's last tool and opens its rows. */
function GroupedTools({
  layout,
  className,
}: {
  readonly layout: Layout;
  readonly className?: string | undefined;
}): ReactElement {
  const tool = useSession((now) => now.tool);
  const [open, setOpen] = useState<GroupName | null>(null);
  const [last, setLast] = useState<Partial<Record<GroupName, string>>>({});
  const active = groupOf(tool);
  const rows = TOOL_GROUPS.find((group) => group.name === open)?.tools ?? [];
  const withPick = layout !== 'phone';

  function press(name: GroupName): void {
    setOpen(open === name ? null : name);
    const first = TOOL_GROUPS.find((group) => group.name === name)?.tools[0];
    const next = last[name] ?? first;
    if (active !== name && next) arm(next);
  }
  return (
    <nav className={cx(css[layout], className)} aria-label={surveyText.tools} data-open={open ? '' : undefined}>
      {open && (
        <div className={css.rows} role="group" aria-label={groupWords[open]}>
          {!withPick && <ToolRow tool="pick" onArm={() => setOpen(null)} />}
          {rows.map((one) => (
            <ToolRow
              key={one}
              tool={one}
              onArm={() => {
                setLast({ ...last, [open]: one });
                setOpen(null);
              }}
            />
          ))}
        </div>
      )}
      <div className={css.targets}>
        {withPick && (
          <button
            type="button"
            className={cx(css.target, tool === 'pick' && css.on)}
            aria-pressed={tool === 'pick'}
            onClick={() => arm('pick')}
          >
            <ToolDrawing of="pick" large />
            <span>{toolWords['pick']}</span>
          </button>
        )}
        {TOOL_GROUPS.map(({ name }) => (
          <button
            key={name}
            type="button"
            className={cx(css.target, active === name && css.on)}
            aria-expanded={open === name}
            onClick={() => press(name)}
          >
            <ToolDrawing of={GROUP_DRAWING[name]} large />
            <span>{groupWords[name]}</span>
          </button>
        ))}
      </div>
    </nav>
  );
}

/** What can be measured. */
export function ToolsDock({
  layout,
  className,
}: {
  readonly layout: Layout;
  readonly className?: string | undefined;
}): ReactElement {
  return layout === 'desk' ? (
    <DeskTools className={className} />
  ) : (
    <GroupedTools layout={layout} className={className} />
  );
}
