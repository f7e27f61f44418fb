import { useState, type ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { PriceFoot } from './PriceFoot.tsx';
import { PriceRange } from './PriceRange.tsx';
import { QuantityCell } from './QuantityCell.tsx';
import { TakeoffBar, type Which } from './TakeoffBar.tsx';
import { shownTable } from './shownTable.ts';
import { unitShown } from './showQuantity.ts';
import { useNames } from './useNames.ts';
import { useHasMoney } from './useHasMoney.ts';
import { cx } from '../look/cx.ts';
import { useLayout } from '../look/useLayout.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useTakeoff, useUnits } from '../plan.ts';
import { NotAnOffer } from '../questions/NotAnOffer.tsx';
import type { LineTable, TableCell, TableRow } from '../../takeoff/lineTable.ts';
import type { Trade } from '../../takeoff/line.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { notAnOfferWords, tradeWords } from '../../words/takeoffWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** The price has its own foot of the table. */
const PRICE = 'money.price';
/** What is no single number, but low, likely and high. */
const RANGED: readonly Trade[] = ['hours', 'material', 'dust', 'money'];

/** Every quantity, hour, material and amount, by zone and in total. Each figure is a button that asks why. */
export function TakeoffTable(): ReactElement {
  const { takeoff, stale } = useTakeoff();
  const [which, setWhich] = useState<Which>('likely');
  const phone = useLayout() === 'phone';
  const hasMoney = useHasMoney();
  if (!takeoff) return <EmptyState title={takeoffText.noneYet} sentence={takeoffText.asOf} />;
  if (takeoff.blocked)
    return <EmptyState title={takeoffText.noneYet} sentence={notAnOfferWords[takeoff.blocked] ?? takeoff.blocked} />;
  return (
    <div className={cx(css.takeoff, phone && css.phone, stale && css.stale)} aria-busy={stale}>
      {hasMoney && (phone ? <PriceRange takeoff={takeoff} /> : <NotAnOffer takeoff={takeoff} />)}
      <TakeoffBar which={which} onWhich={setWhich} takeoff={takeoff} />
      <div className={css.scroll}>
        <Table takeoff={takeoff} which={which} />
      </div>
    </div>
  );
}

function Table({ takeoff, which }: { readonly takeoff: Takeoff; readonly which: Which }): ReactElement {
  const names = useNames();
  const hasMoney = useHasMoney();
  const table = shownTable(takeoff, hasMoney);
  const price = table.groups.flatMap((group) => group.rows).find((row) => row.code === PRICE) ?? null;
  return (
    <table className={css.table}>
      <thead>
        <tr>
          <th scope="col">{takeoffText.work}</th>
          {table.zones.map((zone) => (
            <th key={zone.id} scope="col">
              {names.zone(zone.id)}
              {zone.held !== null && <span className={css.heldTag}>{takeoffText.held}</span>}
            </th>
          ))}
          <th scope="col">{takeoffText.total}</th>
        </tr>
      </thead>
      {table.groups.map((group) => (
        <tbody key={group.trade}>
          <tr className={css.group}>
            <th scope="rowgroup" colSpan={table.zones.length + 2}>
              {tradeWords[group.trade]}
              {RANGED.includes(group.trade) && `, ${takeoffText[which].toLowerCase()}`}
            </th>
          </tr>
          {group.rows
            .filter((row) => row !== price)
            .map((row) => (
              <Row key={row.key} row={row} zones={table.zones} which={which} />
            ))}
        </tbody>
      ))}
      {hasMoney && <PriceFoot takeoff={takeoff} table={table} price={price} which={which} />}
    </table>
  );
}

/** Rows that a row before them has added up already. */
const PART_OF_ROW = new Set(['fieldOf', 'tightSpot', 'edge.wall', 'edge.obstruction', 'edge.drop']);

interface RowProps {
  readonly row: TableRow;
  readonly zones: LineTable['zones'];
  readonly which: Which;
}

function Row({ row, zones, which }: RowProps): ReactElement {
  const names = useNames();
  const unit = unitShown(row.unit, useUnits());
  const name = names.row(row);
  const cell = (of: TableCell | null): ReactElement => (
    <QuantityCell cell={of} name={name} unit={row.unit} which={which} />
  );
  return (
    <tr>
      <th scope="row" className={cx(PART_OF_ROW.has(row.code) && css.part)}>
        {name}
        {unit !== '' && <span className={css.unit}>{unit}</span>}
      </th>
      {zones.map((zone) => (
        <td key={zone.id}>{cell(row.cells.get(zone.id) ?? null)}</td>
      ))}
      <td className={css.total}>{cell(row.total)}</td>
    </tr>
  );
}
