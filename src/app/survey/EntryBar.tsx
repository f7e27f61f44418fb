import type { ReactElement } from 'react';
import css from './EntryBar.module.css';
import { cx } from '../look/cx.ts';
import type { RecordType } from '../../model/records/all.ts';
import { nextTag, type TaggedType } from '../../edit/tags.ts';
import { applyCells, onFloor } from '../../model/doc.ts';
import { hintSentence } from '../../words/handWords.ts';
import { Button } from '../parts/Button.tsx';
import { Figure } from '../parts/Figure.tsx';
import { Tag } from '../parts/Tag.tsx';
import { useDoc, useFloor, useUnits } from '../plan.ts';
import { setSettings, useSession } from '../session.ts';
import { surveyText, toolWords } from '../../words/surveyWords.ts';
import { send, startInMiddle, useHand } from './hand.ts';
import { itemFields } from './itemFields.tsx';
import { sizeFigure } from './itemLine.ts';
import { LineFields, TurnKeys, useTypedLine } from './LineFields.tsx';
import { settingsOf } from './toolSettings.ts';

/** Tools that go from point to point have a length and a turn to type. */
const PATHS = new Set(['slab', 'finding', 'outOfScope', 'zone', 'crack', 'joint', 'wall', 'dimension', 'steps']);
const TAGGED = new Set([
  'slab',
  'finding',
  'outOfScope',
  'zone',
  'crack',
  'joint',
  'wall',
  'dimension',
  'obstruction',
  'steps',
  'reading',
  'note',
  'entrance',
  'opening',
]);

function useNextTag(tool: string): string | null {
  const floor = useFloor();
  return useDoc((doc) => (floor && TAGGED.has(tool) ? nextTag(doc, floor.id, tool as RecordType as TaggedType) : null));
}

/** How large the item in hand is by now, where a thumb draws it. */
function LiveSize({ tool }: { readonly tool: string }): ReactElement | null {
  const units = useUnits();
  const cells = useHand((now) => now.draft?.cells) ?? [];
  const figure = useDoc((doc) =>
    cells.length === 0 ? null : sizeFigure(applyCells(doc, cells), `${tool}:draft`, units),
  );
  return figure && <Figure of={figure} size="title" className={css.size ?? ''} />;
}

/** What nobody finds by looking: how to see more of the plan, and how to set a point beside what it would meet. */
function Keys({ snaps }: { readonly snaps: boolean }): ReactElement {
  return (
    <p className={css.keys}>
      <kbd>{surveyText.keys.space}</kbd> {surveyText.keys.pans}
      {snaps && (
        <>
          , <kbd>{surveyText.keys.alt}</kbd> {surveyText.keys.noSnap}
        </>
      )}
    </p>
  );
}

/** The entry bar: fields in the order of the hand. Enter sets the point, Tab moves on, Esc leaves. */
export function EntryBar({
  inline,
  className,
}: {
  readonly inline: boolean;
  readonly className?: string | undefined;
}): ReactElement {
  const tool = useSession((now) => now.tool);
  const all = useSession((now) => now.settings);
  const units = useUnits();
  const draft = useHand((now) => now.draft);
  const tag = useNextTag(tool);
  const floor = useFloor();
  const noSlab = useDoc((doc) => floor !== null && onFloor(doc, 'slab', floor.id).length === 0);
  const ItemFields = itemFields[tool];
  const settings = settingsOf(tool, all, units);
  const drawing = draft?.from !== null && draft?.from !== undefined;
  const line = useTypedLine(!inline);
  const pending = !inline && PATHS.has(tool) && line.lengthMm !== null;
  const corners = draft?.own?.length ?? 0;
  const anywhere = tool === 'slab' && noSlab;
  // By finger a line begins on the plan: only the first wall of all may begin anywhere, by its length alone.
  const lines = PATHS.has(tool) && (inline || corners > 0 || anywhere);
  const turning = !inline && PATHS.has(tool) && corners > 1;
  const fields = (
    <div className={css.fields}>
      {tool === 'pick' && (
        <label className={css.switch}>
          <input
            type="checkbox"
            checked={settings['touchingToo'] === true}
            onChange={(event) => setSettings('pick', { touchingToo: event.target.checked })}
          />
          {surveyText.touchingToo}
        </label>
      )}
      {lines && <LineFields line={line} inline={inline} />}
      {ItemFields && (
        <ItemFields key={tool} value={settings} inline={inline} entry onSet={(slots) => setSettings(tool, slots)} />
      )}
    </div>
  );
  return (
    <section
      className={cx(inline ? css.bar : css.sheet, className)}
      data-turning={turning ? '' : undefined}
      aria-label={surveyText.entry}
    >
      <div className={css.over}>
        <p className={css.hint} aria-live="polite">
          {[draft && hintSentence(draft.hint), anywhere && !drawing && surveyText.firstLength]
            .filter(Boolean)
            .join(' ')}
        </p>
        {inline && <Keys snaps={tool !== 'pick'} />}
      </div>
      <div className={css.line}>
        <div className={css.name}>
          {tag && <Tag picked>{tag}</Tag>}
          <h2>{toolWords[tool]}</h2>
          {!inline && <LiveSize tool={tool} />}
        </div>
        {fields}
        {turning && <TurnKeys line={line} />}
        {tool !== 'pick' && (
          <div className={css.buttons}>
            {!drawing && inline && (
              <Button size="desk" className={css.byKeyboard} onClick={startInMiddle}>
                {PATHS.has(tool) ? surveyText.startMiddle : surveyText.setMiddle}
              </Button>
            )}
            {drawing && (
              <Button size={inline ? 'desk' : 'site'} onClick={() => send({ kind: 'back' })}>
                {surveyText.back}
              </Button>
            )}
            {pending ? (
              <Button kind="main" onClick={() => line.set(line.lengthMm, line.turnDeg)}>
                {surveyText.setPoint}
              </Button>
            ) : (
              <Button
                size={inline ? 'desk' : 'site'}
                kind={!inline && drawing ? 'main' : 'plain'}
                onClick={() => send(drawing ? { kind: 'finish' } : { kind: 'cancel' })}
              >
                {drawing && !inline ? (surveyText.ends[tool] ?? surveyText.done) : surveyText.done}
              </Button>
            )}
          </div>
        )}
      </div>
    </section>
  );
}
