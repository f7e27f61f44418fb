import { useEffect, useMemo, useRef, useState, type KeyboardEvent, type ReactElement, type ReactNode } from 'react';
import css from './ItemList.module.css';
import type { Point } from '../../geometry/floorShape.ts';
import type { RecordId } from '../../model/cell.ts';
import { showLength } from '../../model/showLength.ts';
import { figureText } from '../../model/showNumber.ts';
import { MM_PER_IN, type Units } from '../../model/units.ts';
import type { Held } from '../../model/doc.ts';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { Row } from '../parts/Row.tsx';
import { planStoreNow, run, useDoc, useFloor, useUnits } from '../plan.ts';
import { pick, session, useSession } from '../session.ts';
import { surveyText } from '../../words/surveyWords.ts';
import { floorItems } from './floorItems.ts';
import { itemLine, type ItemLine } from './itemLine.ts';
import { ItemRows } from './ItemRows.tsx';
import { removePicked } from './removePicked.ts';

const STEPS: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const STEP_MM = { metric: 100, imperial: 4 * MM_PER_IN };

function nudge(line: ItemLine, key: string, by: number, units: Units): string | null {
  const step = STEPS[key];
  if (!step || !run('moveRecords', { ids: [line.id], by: [step[0] * by, step[1] * by] })) return null;
  const now = itemLine(planStoreNow().getState(), line.id, units);
  return surveyText.moved(
    `${now.tag} ${now.words}`,
    surveyText.directions[key] ?? '',
    figureText(showLength(by, units)),
  );
}

function samePick(line: ItemLine, picked: readonly RecordId[], edges: readonly number[]): boolean {
  if (!picked.includes(line.id)) return false;
  return line.edge === null ? edges.length === 0 : edges.includes(line.edge);
}

/** "Looked, none found" is an answer, and goes on the record. */
function NoCracks({ floor }: { readonly floor: Held<'floor'> }): ReactElement {
  const found = floor.noneFound ?? [];
  if (found.includes('crack')) return <p className={css.none}>{surveyText.noneFoundSet}</p>;
  return (
    <EmptyState title={surveyText.noCracks} sentence={surveyText.noCracksHelp}>
      <Button
        size="desk"
        onClick={() => run('setField', { id: floor.id, slot: 'noneFound', value: [...found, 'crack'] })}
      >
        {surveyText.noneFound}
      </Button>
    </EmptyState>
  );
}

/** Where a row was removed the next one takes the focus, so that the keyboard goes on from there. */
function focusRow(list: Element | null, index: number): void {
  requestAnimationFrame(() => {
    const rows = Array.from(list?.querySelectorAll('[role="listitem"]') ?? []);
    const after = rows.find((row) => Number(row.getAttribute('aria-posinset')) === index + 1);
    (after ?? rows.at(-1))?.querySelector('button')?.focus();
  });
}

/** Each row that has the focus is picked: past the rows below, Tab would come to another item's sheet. */
function focusSheet(): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('[data-sheet]')?.focus());
}

/** The plan in words: every item a button. Focus picks, Enter leads to its sheet, arrows move it, Delete removes; results are said aloud. */
export function ItemList({ only }: { readonly only?: string }): ReactElement {
  const floor = useFloor();
  const units = useUnits();
  const doc = useDoc((now) => now);
  const picked = useSession((now) => now.picked);
  const edges = useSession((now) => now.pickedEdges);
  const [said, setSaid] = useState('');
  const all = useMemo(() => (floor ? floorItems(doc, floor.id, units) : []), [doc, floor, units]);
  const lines = only ? all.filter((line) => line.id.startsWith(`${only}:`)) : all;

  function onKeyDown(event: KeyboardEvent, line: ItemLine): void {
    if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      event.stopPropagation();
      // The row that has the focus is meant, whatever was picked before.
      if (!session().picked.includes(line.id)) onPick(line, false);
      const words = `${line.tag} ${line.words}`;
      if (!removePicked()) return;
      setSaid(surveyText.removed(words));
      focusRow(event.currentTarget.closest('[role="list"]'), lines.indexOf(line));
    } else if (event.key === 'Enter' && !event.shiftKey) {
      event.preventDefault();
      onPick(line, false);
      focusSheet();
    } else if (event.key in STEPS && !event.ctrlKey && !event.metaKey && line.edge === null) {
      event.preventDefault();
      event.stopPropagation();
      const words = nudge(line, event.key, STEP_MM[units] * (event.shiftKey ? 10 : 1), units);
      if (words) setSaid(words);
    }
  }
  function onPick(line: ItemLine, shift: boolean): void {
    if (!shift) return pick([line.id], line.edge === null ? [] : [line.edge]);
    const was = session().picked;
    pick(was.includes(line.id) ? was.filter((id) => id !== line.id) : [...was, line.id]);
  }
  function rowOf(line: ItemLine | undefined): ReactNode {
    if (!line) return null;
    return (
      <Row
        key={`${line.id} ${line.edge ?? ''}`}
        tag={line.tag}
        words={line.words}
        figure={line.figure}
        picked={samePick(line, picked, edges)}
        onPick={(shift) => onPick(line, shift)}
        onFocus={() => {
          // A press brings its own pick; only the keyboard picks by focus.
          if (document.activeElement?.matches(':focus-visible')) onPick(line, false);
        }}
        onKeyDown={(event) => onKeyDown(event, line)}
      />
    );
  }
  const list = useRef<HTMLDivElement>(null);
  // What was picked on the plan is in sight in its list too.
  useEffect(() => {
    if (picked.length + edges.length === 0) return;
    list.current?.querySelector('[aria-pressed="true"]')?.scrollIntoView({ block: 'nearest' });
  }, [picked, edges]);
  return (
    <>
      {all.length === 0 && <EmptyState title={surveyText.noItems} sentence={surveyText.noItemsHelp} />}
      <div role="list" className={css.list} ref={list}>
        <ItemRows
          count={lines.length}
          mustShow={lines.findIndex((line) => samePick(line, picked, edges))}
          row={(index) => rowOf(lines[index])}
        />
      </div>
      {floor && all.length > 0 && all.every((line) => !line.id.startsWith('crack:')) && <NoCracks floor={floor} />}
      <div className="forReaders" role="status" aria-live="polite">
        {said}
      </div>
    </>
  );
}
