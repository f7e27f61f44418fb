import type { ReactElement } from 'react';
import css from './WorkTable.module.css';
import { useHasMoney } from './useHasMoney.ts';
import { useNames } from './useNames.ts';
import { useSeveralFloors } from './useSeveralFloors.ts';
import { WorkLine } from './WorkLine.tsx';
import { useDoc } from '../plan.ts';
import type { TableCell } from '../../takeoff/lineTable.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { rateBook } from '../../takeoff/rates/rateBook.ts';
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
  const [net, paid, price] = [line('netFloorAll'), line('hours.person'), line('money.price')];
  const cell = (of: NonNullable<typeof paid>): TableCell => ({ quantity: of.quantity, held: null, lines: [of] });
  return (
    <tfoot>
      {paid && (
        <WorkLine
          name={names.work(paid)}
          kind="foot"
          quantity={net && { quantity: net.quantity, unit: net.unit }}
          quantityLines={net ? [net] : []}
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
