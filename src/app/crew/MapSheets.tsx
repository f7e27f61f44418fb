import { useState, type ReactElement } from 'react';
import { createPortal } from 'react-dom';
import css from './CrewStage.module.css';
import print from './print.module.css';
import { SheetImage } from './SheetImage.tsx';
import { useZoneMap } from './useZoneMap.ts';
import { printPages } from './printPages.ts';
import { useLayout } from '../look/useLayout.ts';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Picker } from '../parts/Picker.tsx';
import { saveCrewCopy } from '../jobs/jobActions.ts';
import { useUnits } from '../plan.ts';
import { PAPER_SCALES, type Sheet } from '../../exchange/paper.ts';
import type { Units } from '../../model/units.ts';
import { paperWords } from '../../words/paperWords.ts';
import { crewText } from '../../words/siteWords.ts';

const LARGEST = 'largest';
const sheets = (['A4', 'letter'] as const).map((value) => ({ value, words: crewText.papers[value] }));
const scalesIn = (units: Units): { value: string; words: string }[] => [
  { value: LARGEST, words: crewText.largest },
  ...PAPER_SCALES[units].map((scale) => ({ value: String(scale), words: paperWords.oneTo(scale) })),
];

/** The zone map as it will be printed: sheet, scale, the pages, and the way to paper. */
export function MapSheets(): ReactElement {
  const units = useUnits();
  const phone = useLayout() === 'phone';
  const [sheet, setSheet] = useState<Sheet>(units === 'imperial' ? 'letter' : 'A4');
  const [asked, setAsked] = useState<string>(LARGEST);
  const scales = scalesIn(units);
  // A scale of the other units, asked for before they were changed, is on this list no more.
  const scale = scales.some(({ value }) => value === asked) ? asked : LARGEST;
  const { pages, fault } = useZoneMap(sheet, scale === LARGEST ? null : Number(scale));
  return (
    <div className={css.map}>
      <div className={css.options}>
        <Choice label={crewText.paper} value={sheet} options={sheets} onChoose={setSheet} />
        <Picker label={crewText.scale} value={scale} options={scales} onPick={setAsked} />
        {fault && <b role="status">{fault}</b>}
        <div>
          <Button kind="main" wide onClick={() => printPages(pages)}>
            {crewText.print}
          </Button>
          <p>{crewText.printHelp}</p>
        </div>
        <div>
          <Button wide onClick={saveCrewCopy}>
            {crewText.saveCopy}
          </Button>
          <p>{crewText.saveCopyHelp}</p>
        </div>
      </div>
      {/* Nothing in it can be pressed: without a tab stop the keyboard could not scroll it. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
      <div className={css.pages} role="region" aria-label={crewText.pages} tabIndex={0}>
        {pages.map((page, index) => (
          // On a phone a sheet is wider than its frame: the keyboard scrolls that too.
          // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
          <figure key={crewText.page(index + 1, pages.length)} className={css.page} tabIndex={phone ? 0 : undefined}>
            <figcaption>{crewText.page(index + 1, pages.length)}</figcaption>
            <SheetImage page={page} name={crewText.page(index + 1, pages.length)} className={css.sheet ?? ''} />
          </figure>
        ))}
      </div>
      {createPortal(
        <div className={print.paper} aria-hidden="true" data-paper="">
          {pages.map((page, index) => (
            <SheetImage
              key={crewText.page(index + 1, pages.length)}
              page={page}
              name={crewText.title}
              className={print.sheet ?? ''}
              trueSize
            />
          ))}
        </div>,
        document.body,
      )}
    </div>
  );
}
