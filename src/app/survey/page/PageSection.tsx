import type { ReactElement } from 'react';
import css from './Page.module.css';
import { fitOf } from '../../../edit/pageMap.ts';
import { onFloor, type Held } from '../../../model/doc.ts';
import { FileButton } from '../../jobs/FileButton.tsx';
import { Button } from '../../parts/Button.tsx';
import { run, undo, useDoc, useFloor } from '../../plan.ts';
import { say, trueThe } from '../../session.ts';
import { pageText } from '../../../words/pageWords.ts';
import { ui } from '../../../words/uiWords.ts';
import { addPage, PAGE_TYPES, replacePage } from './addPage.ts';

const FADES = [0, 0.5, 0.75] as const;

function OnePage({ page }: { readonly page: Held<'page'> }): ReactElement {
  const result = fitOf(page);
  const trued = result.ok ? pageText.trued(page.dimensions.length, result.fit.areaPlusMinusPct) : pageText.notTrued;
  const fade = page.fade ?? 0;
  const next = FADES[(FADES.findIndex((one) => one === fade) + 1) % FADES.length] ?? 0;
  const setHidden = (hidden: boolean): boolean => run('setField', { id: page.id, slot: 'hidden', value: hidden });
  function remove(): void {
    if (run('removeRecords', { ids: [page.id] })) say(pageText.removed(page.name), { words: ui.undo, run: undo });
  }
  return (
    <div className={css.page}>
      <div className={css.head}>
        <b title={page.name}>{pageText.title}</b>
        <span>{trued}</span>
      </div>
      {!result.ok && !page.hidden && <p className={css.notice}>{pageText.notTruedSays}</p>}
      <div className={css.buttons}>
        <Button size="desk" kind={result.ok ? 'plain' : 'main'} onClick={() => trueThe(page.id)}>
          {result.ok ? pageText.trueAgain : pageText.trueIt}
        </Button>
        <FileButton
          wide
          label={pageText.replace}
          accept={PAGE_TYPES}
          onFile={(file) => void replacePage(page.id, file)}
        />
        <Button size="desk" aria-pressed={page.hidden === true} onClick={() => setHidden(page.hidden !== true)}>
          {page.hidden ? pageText.show : pageText.hide}
        </Button>
        <Button size="desk" onClick={() => run('setField', { id: page.id, slot: 'fade', value: next })}>
          {pageText.fades[fade === 0 ? 'full' : fade < 0.6 ? 'half' : 'faint']}
        </Button>
        <Button size="desk" onClick={remove}>
          {pageText.remove}
        </Button>
      </div>
    </div>
  );
}

/** The pages under a floor: what they are trued by, and what can be done with them. */
export function PageSection(): ReactElement | null {
  const floor = useFloor();
  const pages = useDoc((doc) => (floor ? onFloor(doc, 'page', floor.id) : []));
  return (
    <section aria-label={pageText.title}>
      {pages.map((page) => (
        <OnePage key={page.id} page={page} />
      ))}
      {pages.length === 0 && (
        <div className={css.page}>
          <div className={css.head}>
            <b>{pageText.title}</b>
            <span>{pageText.none}</span>
          </div>
          <p className={css.help}>{pageText.noneSays}</p>
          <FileButton wide label={pageText.put} accept={PAGE_TYPES} onFile={(file) => void addPage(file)} />
        </div>
      )}
    </section>
  );
}
