import { useMemo, useState, type ReactElement } from 'react';
import { createPortal } from 'react-dom';
import css from './Estimate.module.css';
import { CustomerPage } from './CustomerPage.tsx';
import { HousePage } from './HousePage.tsx';
import { NowPage } from './NowPage.tsx';
import print from '../crew/print.module.css';
import { printPages } from '../crew/printPages.ts';
import { SheetImage } from '../crew/SheetImage.tsx';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { openPanel } from '../session.ts';
import { saveText } from '../takeoff/saveText.ts';
import type { Held } from '../../model/doc.ts';
import { estimateCsv } from '../../exchange/estimateCsv.ts';
import { estimateSheets } from '../../exchange/estimateSheets.ts';
import type { Sheet } from '../../exchange/paper.ts';
import { brokenLines } from '../../takeoff/issuedEstimate.ts';
import { estimateText } from '../../words/estimateWords.ts';

type Page = 'customer' | 'house' | 'now';
const pages = (['customer', 'house', 'now'] as const).map((value) => ({ value, words: estimateText[value] }));

const papers = (['A4', 'letter'] as const).map((value) => ({ value, words: estimateText.papers[value] }));

/** An issued estimate as it was issued; nothing in it can be changed. */
export function EstimateView({ estimate }: { readonly estimate: Held<'estimate'> }): ReactElement {
  const [page, setPage] = useState<Page>('customer');
  const broken = useMemo(() => brokenLines(estimate).length > 0, [estimate]);
  const reader = page === 'house' ? 'house' : 'customer';
  const [sheet, setSheet] = useState<Sheet>(estimate.units === 'imperial' ? 'letter' : 'A4');
  const sheets = useMemo(() => estimateSheets(estimate, sheet, reader), [estimate, sheet, reader]);
  const close = (): void => openPanel('estimates');
  const fileName = `${estimateText.title(estimate.number)}.csv`;
  return (
    <Dialog
      title={estimateText.title(estimate.number)}
      open
      wide
      onClose={close}
      foot={
        <>
          {page !== 'now' && <Button onClick={() => printPages(sheets)}>{estimateText.print}</Button>}
          <Button onClick={() => void saveText(estimateCsv(estimate), fileName, 'text/csv')}>
            {estimateText.saveCsv}
          </Button>
          <Button onClick={close}>{estimateText.close}</Button>
        </>
      }
    >
      <Choice label={estimateText.sheets} quiet value={page} options={pages} onChoose={setPage} />
      <div className={css.head}>
        <b>{estimate.job?.name}</b>
        {[estimate.job?.place, estimate.job?.customer].map((text) => text && <p key={text}>{text}</p>)}
        <p>{estimateText.onDay(estimate.issuedOn.slice(0, 10))}</p>
        {estimate.job?.invented && <p>{estimateText.invented}</p>}
        {broken && <p role="alert">{estimateText.broken}</p>}
      </div>
      {page === 'customer' && <CustomerPage estimate={estimate} />}
      {page === 'house' && <HousePage estimate={estimate} />}
      {page === 'now' && <NowPage estimate={estimate} />}
      {page !== 'now' && (
        <Choice className={css.paper} label={estimateText.paper} value={sheet} options={papers} onChoose={setSheet} />
      )}
      {createPortal(
        <div className={print.paper} aria-hidden="true" data-paper="">
          {sheets.map((one, index) => (
            <SheetImage
              key={estimateText.page(index + 1, sheets.length)}
              page={one}
              name={estimateText.title(estimate.number)}
              className={print.sheet ?? ''}
              trueSize
            />
          ))}
        </div>,
        document.body,
      )}
    </Dialog>
  );
}
