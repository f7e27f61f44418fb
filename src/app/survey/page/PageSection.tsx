import type { ReactElement } from 'react';
import css from './Page.module.css';
import { fitOf } from '../../../edit/pageMap.ts';
import { onFloor, type Held } from '../../../model/doc.ts';
import { FileButton } from '../../jobs/FileButton.tsx';
import { Button } from '../../parts/Button.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import { run, undo, useDoc, useFloor } from '../../plan.ts';
import { goTo, openPanel, say, session, trueThe } from '../../session.ts';
import { pageText } from '../../../words/pageWords.ts';
import { ui } from '../../../words/uiWords.ts';
import { addPage, PAGE_TYPES, replacePage } from './addPage.ts';

const FADES = [0, 0.5, 0.75] as const;

interface OnePageProps {
  readonly page: Held<'page'>;
  /** Everything that can be done with it; else the two usual things, and a way to the rest. */
  readonly whole: boolean;
}

function MoreOfPage({ page }: { readonly page: Held<'page'> }): ReactElement {
  const fade = page.fade ?? 0;
  const next = FADES[(FADES.findIndex((one) => one === fade) + 1) % FADES.length] ?? 0;
  const setHidden = (hidden: boolean): boolean => run('setField', { id: page.id, slot: 'hidden', value: hidden });
  function remove(): void {
    if (run('removeRecords', { ids: [page.id] })) say(pageText.removed(page.name), { words: ui.undo, run: undo });
  }
  return (
    <>
      <Button size="desk" aria-pressed={page.hidden === true} onClick={() => setHidden(page.hidden !== true)}>
        {page.hidden ? pageText.show : pageText.hide}
      </Button>
      <Button size="desk" onClick={() => run('setField', { id: page.id, slot: 'fade', value: next })}>
        {pageText.fades[fade === 0 ? 'full' : fade < 0.6 ? 'half' : 'faint']}
      </Button>
      <Button size="desk" onClick={remove}>
        {pageText.remove}
      </Button>
    </>
  );
}

function OnePage({ page, whole }: OnePageProps): ReactElement {
  const result = fitOf(page);
  const trued = result.ok ? pageText.trued(page.dimensions.length, result.fit.areaPlusMinusPct) : pageText.notTrued;
  function begin(): void {
    openPanel(null);
    if (session().stage !== 'survey') goTo('survey');
    trueThe(page.id);
  }
  return (
    <div className={css.page}>
      <div className={css.head}>
        <b title={page.name}>{whole ? page.name : pageText.title}</b>
        <span>{page.hidden ? pageText.hidden : trued}</span>
      </div>
      {!result.ok && !page.hidden && <p className={css.notice}>{pageText.notTruedSays}</p>}
      <div className={whole ? css.buttons : css.three}>
        <Button size="desk" kind={result.ok || page.hidden ? 'plain' : 'main'} onClick={begin}>
          {result.ok ? pageText.trueAgain : pageText.trueIt}
        </Button>
        <FileButton
          wide
          label={pageText.replace}
          accept={PAGE_TYPES}
          onFile={(file) => void replacePage(page.id, file)}
        />
        {whole ? (
          <MoreOfPage page={page} />
        ) : (
          <Button size="desk" onClick={() => openPanel('planPage')} aria-label={pageText.moreOf(page.name)}>
            {pageText.more}
          </Button>
        )}
      </div>
    </div>
  );
}

function usePages(): readonly Held<'page'>[] {
  const floor = useFloor();
  return useDoc((doc) => (floor ? onFloor(doc, 'page', floor.id) : []));
}

function PutPage({ first }: { readonly first: boolean }): ReactElement {
  return (
    <div className={css.page}>
      {first && (
        <div className={css.head}>
          <b>{pageText.title}</b>
          <span>{pageText.none}</span>
        </div>
      )}
      <p className={css.help}>{pageText.noneSays}</p>
      <FileButton
        wide
        label={first ? pageText.put : pageText.another}
        accept={PAGE_TYPES}
        onFile={(file) => {
          openPanel(null);
          void addPage(file);
        }}
      />
    </div>
  );
}

/** The pages under a floor, in the dock: what they are trued by, and the usual things to do. */
export function PageSection(): ReactElement {
  const pages = usePages();
  return (
    <section aria-label={pageText.title}>
      {pages.map((page) => (
        <OnePage key={page.id} page={page} whole={false} />
      ))}
      {pages.length === 0 && <PutPage first />}
    </section>
  );
}

/** Everything about the pages of a floor. */
export function PagesDialog(): ReactElement {
  const pages = usePages();
  return (
    <Dialog title={pageText.title} open onClose={() => openPanel(null)}>
      {pages.map((page) => (
        <OnePage key={page.id} page={page} whole />
      ))}
      <PutPage first={pages.length === 0} />
    </Dialog>
  );
}
