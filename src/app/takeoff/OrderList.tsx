import type { ReactElement } from 'react';
import css from './OrderList.module.css';
import { OrderBar } from './OrderBar.tsx';
import { OrderGroup } from './OrderGroup.tsx';
import { OrderTopping } from './OrderTopping.tsx';
import { cx } from '../look/cx.ts';
import { useLayout } from '../look/useLayout.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useTakeoff } from '../plan.ts';
import { orderTable } from '../../takeoff/orderTable.ts';
import { orderText } from '../../words/orderWords.ts';
import { cautionWords, notAnOfferWords } from '../../words/takeoffWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** Codes of an answer that is open and of the hold that stands for it. */
const IN_SLAB: readonly string[] = ['inSlab', 'hold.inSlab'];

/**
 * What to buy and carry for the floor that is shown: used, to carry, left over, each with its Why. Takes nothing, like
 * `TakeoffTable`, and stands in the same place: it fills the height it is given and scrolls inside, on a phone with the
 * page. It has a bar of its own with copy and save, and no money, so that a crew may read it.
 */
export function OrderList(): ReactElement {
  const { takeoff, stale } = useTakeoff();
  const phone = useLayout() === 'phone';
  if (!takeoff) return <EmptyState title={takeoffText.noneYet} sentence={takeoffText.asOf} />;
  if (takeoff.blocked)
    return <EmptyState title={takeoffText.noneYet} sentence={notAnOfferWords[takeoff.blocked] ?? takeoff.blocked} />;
  const groups = orderTable(takeoff);
  const held = takeoff.holds.length > 0;
  if (groups.length === 0)
    return <EmptyState title={orderText.title} sentence={held ? orderText.nothingHeld : orderText.nothing} />;
  return (
    <div className={cx(css.list, phone && css.phone, stale && css.stale)} aria-busy={stale}>
      <OrderBar takeoff={takeoff} />
      <div className={css.scroll}>
        <table className={css.table} aria-label={orderText.title}>
          <thead>
            <tr>
              <th scope="col">{orderText.item}</th>
              <th scope="col">{orderText.used}</th>
              <th scope="col">{orderText.carry}</th>
              {!phone && <th scope="col">{orderText.left}</th>}
            </tr>
          </thead>
          {groups.map((group) => (
            <OrderGroup key={group.group} group={group} lines={takeoff.lines} narrow={phone} />
          ))}
        </table>
        <OrderTopping takeoff={takeoff} />
        <div className={css.foot}>
          {held && <p>{orderText.heldToo}</p>}
          {takeoff.notAnOffer.some((code) => IN_SLAB.includes(code)) && <p>{orderText.notSawn}</p>}
          <p>{orderText.shelf}</p>
          <p>{cautionWords.localLaw}</p>
        </div>
      </div>
    </div>
  );
}
