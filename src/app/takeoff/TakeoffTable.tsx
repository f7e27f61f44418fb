import type { ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { DriversView } from './DriversView.tsx';
import { OrderList } from './OrderList.tsx';
import { PriceActions } from './PriceActions.tsx';
import { PriceRange } from './PriceRange.tsx';
import { useWayToRead } from './wayToRead.ts';
import { shownTable } from './shownTable.ts';
import { sortedTable, sortedWork } from './sortRows.ts';
import { TakeoffBar } from './TakeoffBar.tsx';
import { useHasMoney } from './useHasMoney.ts';
import { useNames } from './useNames.ts';
import { useWorkName } from './useWorkName.ts';
import { WorkTable } from './WorkTable.tsx';
import { ZonesTable } from './ZonesTable.tsx';
import { cx } from '../look/cx.ts';
import { useLayout } from '../look/useLayout.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useTakeoff } from '../plan.ts';
import { useSession } from '../session.ts';
import { NotAnOffer } from '../questions/NotAnOffer.tsx';
import type { Takeoff } from '../../takeoff/port.ts';
import { workList } from '../../takeoff/workList.ts';
import { notAnOfferWords } from '../../words/takeoffWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** The Takeoff stage: the way it is read, the figures, and under them the price. Each figure is a button that asks why. */
export function TakeoffTable(): ReactElement {
  const { takeoff, stale } = useTakeoff();
  const layout = useLayout();
  const phone = layout === 'phone';
  // On a tablet an open Why takes half of the height: figures come before what is pressed less often.
  const crowded = useSession(({ why }) => why !== null) && layout === 'tablet';
  const hasMoney = useHasMoney();
  // What to buy and carry is for whoever loads the truck: no money beside it.
  const priced = useWayToRead(({ way }) => way !== 'orders') && hasMoney;
  if (!takeoff) return <EmptyState title={takeoffText.noneYet} sentence={takeoffText.asOf} />;
  if (takeoff.blocked)
    return <EmptyState title={takeoffText.noneYet} sentence={notAnOfferWords[takeoff.blocked] ?? takeoff.blocked} />;
  return (
    <div className={cx(css.takeoff, phone && css.phone, stale && css.stale)} aria-busy={stale}>
      {hasMoney && (phone ? <PriceRange takeoff={takeoff} /> : <NotAnOffer takeoff={takeoff} />)}
      <TakeoffBar takeoff={takeoff} />
      <Read takeoff={takeoff} />
      {priced && !crowded && <PriceActions takeoff={takeoff} />}
    </div>
  );
}

function Read({ takeoff }: { readonly takeoff: Takeoff }): ReactElement {
  const { way, which, sort } = useWayToRead();
  const hasMoney = useHasMoney();
  const names = useNames();
  const workName = useWorkName();
  switch (way) {
    case 'zones': {
      const table = sortedTable(shownTable(takeoff, hasMoney), sort, which, names.row);
      return (
        <div className={css.scroll}>
          <ZonesTable takeoff={takeoff} table={table} />
        </div>
      );
    }
    case 'work':
    case 'phases': {
      const groups = sortedWork(workList(takeoff, way === 'work' ? 'zone' : 'phase'), sort, workName);
      return (
        <div className={css.scroll}>
          <WorkTable takeoff={takeoff} groups={groups} />
        </div>
      );
    }
    case 'drivers':
      return (
        <div className={css.scroll}>
          <DriversView takeoff={takeoff} />
        </div>
      );
    case 'orders':
      return (
        <div className={css.fill}>
          <OrderList />
        </div>
      );
  }
}
