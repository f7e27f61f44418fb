import { useEffect, useRef, useState, type ReactElement } from 'react';
import css from './Page.module.css';
import { fitOf, pageMatrix, pageScale, pixelAt } from '../../../edit/pageMap.ts';
import type { TrueFit } from '../../../geometry/fitTrue.ts';
import { mapPoint } from '../../../geometry/transform.ts';
import type { RecordId } from '../../../model/cell.ts';
import { onFloor, recordOf, type Held } from '../../../model/doc.ts';
import { showLength } from '../../../model/showLength.ts';
import { figureText, showNumber } from '../../../model/showNumber.ts';
import type { TrueState } from '../../../canvas/tools/trueTool.ts';
import { Button } from '../../parts/Button.tsx';
import { DockHead } from '../../parts/Dock.tsx';
import { Icon } from '../../parts/Icon.tsx';
import { MeasureField } from '../../parts/MeasureField.tsx';
import { floorNow, planStoreNow, run, useDoc, useUnits } from '../../plan.ts';
import { arm, session, setCamera, setSettings, trueThe, useSession } from '../../session.ts';
import { pageText } from '../../../words/pageWords.ts';
import { cameraOf } from '../cameraOf.ts';
import { send } from '../hand.ts';

function useTrueState(): TrueState {
  const state = useSession((now) => now.toolState) as TrueState | null;
  return state ?? { at: 'resting' };
}

/** The length of the line that has just been picked on the page. */
function LengthOfPick(): ReactElement {
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => input.current?.focus(), []);
  const [mm, setMm] = useState<number | null>(null);
  const set = (length: number | null): void => {
    if (length !== null) send({ kind: 'typed', lengthMm: length });
  };
  return (
    <>
      <MeasureField
        label={pageText.knownLength}
        mm={mm}
        optional
        minMm={1}
        inputRef={input}
        onSet={setMm}
        onEnter={set}
      />
      <Button kind="main" blocked={mm === null ? pageText.typeLength : null} onClick={() => set(mm)}>
        {pageText.setLength}
      </Button>
      <Button size="desk" onClick={() => send({ kind: 'cancel' })}>
        {pageText.pickAgain}
      </Button>
    </>
  );
}

function takeOut(page: Held<'page'>, index: number): void {
  const dimensions = page.dimensions
    .toSpliced(index, 1)
    .map(({ from, to, lengthMm, by }) => ({ from, to, lengthMm, by }));
  run('truePage', { id: page.id, dimensions });
}

function Dimensions({ page, fit }: { readonly page: Held<'page'>; readonly fit: TrueFit | null }): ReactElement {
  const units = useUnits();
  const spare = page.dimensions.length > (fit?.oneScale ? 1 : 2);
  return (
    <ul>
      {page.dimensions.map(({ from, to, lengthMm }, index) => {
        const residual = fit?.residualsMm[index] ?? 0;
        return (
          <li key={`${from.join()} ${to.join()}`} className={css.dimension}>
            <span className={css.words}>
              <b>{figureText(showLength(lengthMm, units))}</b>
              <small>{spare ? pageText.residual(showNumber(residual, 1)) : pageText.noSpare}</small>
            </span>
            <Button size="desk" icon={<Icon name="close" small />} onClick={() => takeOut(page, index)}>
              {pageText.takeOut}
            </Button>
          </li>
        );
      })}
    </ul>
  );
}

function Facts({ fit }: { readonly fit: TrueFit }): ReactElement {
  const [x, y] = fit.lengthPlusMinusPct;
  const percent = (value: number): string => `${showNumber(value, value < 0.095 ? 2 : 1)}%`;
  return (
    <dl className={css.facts}>
      <div>
        <dt>{pageText.onAreas}</dt>
        <dd>±{percent(fit.areaPlusMinusPct)}</dd>
      </div>
      <div>
        <dt>{pageText.onLengths}</dt>
        <dd>±{percent(Math.max(x, y))}</dd>
      </div>
      <div>
        <dt>{pageText.stretch}</dt>
        <dd>{fit.oneScale ? pageText.notKnown : percent(fit.stretchPct)}</dd>
      </div>
      <div>
        <dt>{pageText.turn}</dt>
        <dd>{showNumber((fit.turn * 180) / Math.PI, 2)}°</dd>
      </div>
    </dl>
  );
}

/** A page that is trued is there to be traced: with nothing drawn yet the slab comes first. */
function leave(trued: boolean): void {
  trueThe(null);
  const floor = floorNow();
  if (trued && floor && onFloor(planStoreNow().getState(), 'slab', floor.id).length === 0) arm('slab');
}

function whatNext(fit: TrueFit | null): string {
  if (!fit) return pageText.pickTwoEnds;
  return fit.oneScale ? pageText.pickAcross : pageText.pickMore;
}

/** A page that is trued changes its size on the floor: the camera goes along, so that it stays where the eye has it. */
function useCameraOnPage(page: Held<'page'> | null): void {
  const before = useRef(page);
  useEffect(() => {
    const was = before.current;
    before.current = page;
    if (!was || !page || was.id !== page.id || was === page) return;
    const camera = cameraOf(session());
    const pixel = pixelAt(was, camera.middle);
    if (!pixel || !page.floor) return;
    const middle = mapPoint(pageMatrix(page), pixel);
    setCamera(page.floor, { ...camera, middle, pxPerMm: (camera.pxPerMm * pageScale(was)) / pageScale(page) });
  }, [page]);
}

/** True: pick two ends of a known dimension, type its length; a second across the page checks the other direction. */
export function TruePanel({ page: id }: { readonly page: RecordId }): ReactElement | null {
  const page = useDoc((doc) => recordOf(doc, 'page', id));
  useCameraOnPage(page);
  const state = useTrueState();
  const units = useUnits();
  const level = useSession((now) => now.settings['true']?.['level'] === true);
  useEffect(() => {
    const finger = matchMedia('(pointer: coarse)').matches;
    setSettings('true', { page: id, level: false, by: finger ? 'finger' : 'mouse', units });
  }, [id, units]);
  // A level line is one pick; after it the next pick is a known length again.
  const levelLine = page?.levelLine;
  const lastLine = useRef(levelLine);
  useEffect(() => {
    if (lastLine.current === levelLine) return;
    lastLine.current = levelLine;
    setSettings('true', { level: false });
  }, [levelLine]);
  if (!page) return null;
  const result = fitOf(page);
  const fit = result.ok ? result.fit : null;
  const asking = state.at === 'asking';
  return (
    <div className={css.panel}>
      <DockHead>{pageText.trueTitle}</DockHead>
      <div className={css.steps}>
        {!fit && <p className={css.notice}>{pageText.notTruedSays}</p>}
        {asking ? (
          <LengthOfPick />
        ) : (
          <p className={css.step} aria-live="polite">
            {level ? pageText.pickLevel : state.at === 'reaching' ? pageText.pickOther : whatNext(fit)}
          </p>
        )}
      </div>
      <Dimensions page={page} fit={fit} />
      {fit && <Facts fit={fit} />}
      <div className={css.foot}>
        {!asking && (
          <Button size="desk" wide aria-pressed={level} onClick={() => setSettings('true', { level: !level })}>
            {level ? pageText.levelOff : levelLine ? pageText.levelAgain : pageText.level}
          </Button>
        )}
        <Button wide kind={fit && !asking ? 'main' : 'plain'} onClick={() => leave(fit !== null)}>
          {fit ? pageText.finish : pageText.later}
        </Button>
      </div>
    </div>
  );
}
