import type { ReactElement } from 'react';
import css from './ZoneSplit.module.css';
import { RECIPE } from './RecipeEditor.tsx';
import { isWorthShowing, splitBlocks, splitRemainderM2, type SplitBlock } from './splitBlocks.ts';
import { splitWords } from './splitWords.ts';
import { useZoneRecipe } from './useZoneRecipe.ts';
import { zoneKey } from './zoneNames.ts';
import { cx } from '../look/cx.ts';
import { Button } from '../parts/Button.tsx';
import { Figure } from '../parts/Figure.tsx';
import { ToolDrawing } from '../parts/ToolDrawing.tsx';
import { useDoc, useTakeoff, useUnits } from '../plan.ts';
import { askSpot, askWhy, useSession } from '../session.ts';
import { askToSee, type CloseUp } from '../survey/fit.ts';
import { showPlan } from '../survey/showPlan.ts';
import type { Point } from '../../geometry/floorShape.ts';
import type { Held } from '../../model/doc.ts';
import { showArea } from '../../model/showNumber.ts';
import { tightSpots } from '../../takeoff/spotLines.ts';
import { prepText } from '../../words/stageWords.ts';

/** The zone as blocks, machine first, with bars in proportion and each reason in one line; they close to the net floor. */
export function ZoneSplit({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const units = useUnits();
  const doc = useDoc((now) => now);
  const { takeoff, stale } = useTakeoff();
  const recipe = useZoneRecipe(zone);
  const measure = takeoff?.measure.zones.find((each) => each.id === zoneKey(zone));
  if (!takeoff || !measure) return <p className={css.waiting}>{prepText.waiting}</p>;

  const spots = tightSpots(takeoff.measure.zones);
  const blocks = splitBlocks(measure, (piece) => spots.find((spot) => spot.piece === piece)?.tag ?? null);
  const isAlone = blocks.every(({ kind, barred }) => kind !== 'machine' || barred);
  const restM2 = splitRemainderM2(measure, blocks);
  const netLine = takeoff.lines.find((line) => line.code === 'netFloor' && line.zone === zoneKey(zone));
  return (
    <section className={cx(css.split, stale && css.stale)} aria-label={prepText.splits} aria-busy={stale}>
      {blocks.filter(isWorthShowing).map((block) => {
        const words = splitWords(block, { units, recipe, doc });
        return <Block key={block.key} block={block} alone={isAlone} name={words.name} reason={words.reason} />;
      })}
      {Math.abs(restM2) >= 0.005 && (
        <Block
          block={{
            key: 'rest',
            kind: 'tight',
            areaM2: restM2,
            share: restM2 / measure.netM2,
            tag: null,
            machine: null,
            place: 0,
            at: null,
            gap: null,
            blockedBy: null,
            barred: false,
            edgeM: 0,
            stopM: 0,
          }}
          alone={false}
          name={prepText.handTool}
          reason={prepText.handOnly}
        />
      )}
      <button
        type="button"
        className={css.total}
        onClick={() => netLine && askWhy(netLine.key)}
        aria-disabled={!netLine}
      >
        <span>{prepText.addsUp}</span>
        <Figure of={showArea(measure.netM2, units)} size="title" />
      </button>
    </section>
  );
}

/** The machine is chosen further down the same dock. */
function toRecipe(): void {
  document.getElementById(RECIPE)?.scrollIntoView({ block: 'start' });
}

/** A gap that a grinder does not pass is some 13 px wide from here; on the plan of a phone it may be less. */
const GAP_IN_SIGHT: CloseUp = { leastPxPerMm: 0.019, roomMm: 2500 };

function showSpot(at: Point | null): void {
  askSpot(at);
  if (at) askToSee([at], GAP_IN_SIGHT);
  showPlan();
}

interface BlockProps {
  readonly block: SplitBlock;
  /** No machine works the zone: then another one is worth a thought. */
  readonly alone: boolean;
  readonly name: string;
  readonly reason: string;
}

function Block({ block, alone, name, reason }: BlockProps): ReactElement {
  const units = useUnits();
  const asked = useSession((now) => block.at !== null && isSameSpot(now.spot, block.at));
  const head = (
    <>
      <ToolDrawing of={block.kind === 'machine' ? 'machine' : 'handTool'} />
      <span>{name}</span>
      <Figure of={showArea(block.areaM2, units)} size="title" />
    </>
  );
  return (
    <div className={cx(css.block, asked && css.asked)}>
      {block.at ? (
        <button
          type="button"
          className={css.name}
          aria-pressed={asked}
          onClick={() => (asked ? askSpot(null) : showSpot(block.at))}
        >
          {head}
          <span className="forReaders">{prepText.showOnPlan}</span>
        </button>
      ) : (
        <div className={css.name}>{head}</div>
      )}
      <div className={cx(css.bar, block.barred && css.barred, block.place > 0 && css.follows)} aria-hidden="true">
        <i style={{ width: `${String(block.share * 100)}%` }} />
      </div>
      <p>{reason}</p>
      {block.kind === 'machine' && block.place === 0 && block.barred && alone && (
        <Button size="desk" onClick={toRecipe}>
          {prepText.otherMachine}
        </Button>
      )}
    </div>
  );
}

function isSameSpot(spot: Point | null, at: Point): boolean {
  return spot !== null && spot[0] === at[0] && spot[1] === at[1];
}
