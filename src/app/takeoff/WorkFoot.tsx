import type { ReactElement } from 'react';
import css from './WorkTable.module.css';
import { useHasMoney } from './useHasMoney.ts';
import { useNames } from './useNames.ts';
import { useSeveralFloors } from './useSeveralFloors.ts';
import { WorkLine } from './WorkLine.tsx';
import { useDoc } from '../plan.ts';
import type { Line, Range } from '../../takeoff/line.ts';
import type { TableCell } from '../../takeoff/lineTable.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { rateBook } from '../../takeoff/rates/rateBook.ts';
import { workList } from '../../takeoff/workList.ts';
import { questionsText } from '../../words/stageWords.ts';
import { takeoffText } from '../../words/whyWords.ts';
import { workText } from '../../words/workWords.ts';

/** The end of the list: what is paid, over how much floor, and what it costs. */
export function WorkFoot({ takeoff, narrow }: { readonly takeoff: Takeoff; readonly narrow: boolean }): ReactElement {
  const names = useNames();
  const hasMoney = useHasMoney();
  const severalFloors = useSeveralFloors();
  const marginPct = useDoc((doc) => rateBook(doc).pricing.marginPct);
  const line = (code: string) => takeoff.lines.find((each) => each.code === code) ?? null;
  const [paid, price] = [line('hours.person'), line('money.price')];
  const worked = workedFloor(takeoff);
  const cell = (of: NonNullable<typeof paid>): TableCell => ({ quantity: of.quantity, held: null, lines: [of] });
  return (
    <tfoot>
      {paid && (
        <WorkLine
          name={names.work(paid)}
          kind="foot"
          quantity={worked && { quantity: worked.quantity, unit: 'm2' }}
          quantityLines={worked?.lines ?? []}
          hours={cell(paid)}
          narrow={narrow}
        />
      )}
      {hasMoney && price && (
        <WorkLine
          name={names.work(price)}
          head={
            <>
              {workText.priceAt(marginPct)}
              {takeoff.notices.includes('samplePrices') && <small>{questionsText.sample}</small>}
              {severalFloors && <small>{takeoffText.onlyThisFloor}</small>}
            </>
          }
          kind="foot"
          quantity={null}
          quantityLines={[]}
          hours={cell(price)}
          unit="minor"
          narrow={narrow}
        />
      )}
      {hasMoney && !price && (
        <tr className={css.foot}>
          <th scope="row" colSpan={narrow ? 3 : 5}>
            {takeoffText.heldTitle}
          </th>
        </tr>
      )}
    </tfoot>
  );
}

/** Floor that the hours are for: held zones have none, so their floor is not in it either. */
function workedFloor(takeoff: Takeoff): { readonly quantity: Range; readonly lines: readonly Line[] } | null {
  const whole = takeoff.lines.filter(({ code }) => code === 'netFloorAll');
  const zones = workList(takeoff, 'zone').filter(({ kind }) => kind === 'zone');
  const lines = zones.some(({ hours }) => hours === null)
    ? zones.flatMap(({ hours, netFloor }) => (hours === null ? [] : (netFloor?.lines ?? [])))
    : whole;
  if (lines.length === 0) return null;
  const of = (which: keyof Range): number => lines.reduce((sum, { quantity }) => sum + quantity[which], 0);
  return { quantity: { low: of('low'), likely: of('likely'), high: of('high') }, lines };
}
