import type { ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { PriceFoot } from './PriceFoot.tsx';
import { QuantityCell } from './QuantityCell.tsx';
import { useWayToRead } from './wayToRead.ts';
import { unitShown } from './showQuantity.ts';
import { SortHead } from './SortHead.tsx';
import { BY_NAME } from './sortRows.ts';
import { useHasMoney } from './useHasMoney.ts';
import { useNames } from './useNames.ts';
import { cx } from '../look/cx.ts';
import { useUnits } from '../plan.ts';
import type { Trade } from '../../takeoff/line.ts';
import type { LineTable, TableCell, TableRow } from '../../takeoff/lineTable.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { tradeWords } from '../../words/takeoffWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** The price has its own foot of the table. */
const PRICE = 'money.price';
/** What is no single number, but low, likely and high. */
const RANGED: readonly Trade[] = ['hours', 'material', 'dust', 'money'];

interface ZonesTableProps {
  readonly takeoff: Takeoff;
  readonly table: LineTable;
}

/** Every quantity, hour, material and amount, zones side by side and in total. */
export function ZonesTable({ takeoff, table }: ZonesTableProps): ReactElement {
  const names = useNames();
  const hasMoney = useHasMoney();
  const which = useWayToRead((now) => now.which);
  const price = table.groups.flatMap((group) => group.rows).find((row) => row.code === PRICE) ?? null;
  return (
    <table className={css.table}>
      <thead>
        <tr>
          <SortHead by={BY_NAME} words={takeoffText.work} />
          {table.zones.map((zone) => (
            <SortHead
              key={zone.id}
              by={zone.id}
              words={names.zone(zone.id)}
              tag={zone.held === null ? null : takeoffText.held}
            />
          ))}
          <SortHead by="total" words={takeoffText.total} />
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
              <Row key={row.key} row={row} zones={table.zones} />
            ))}
        </tbody>
      ))}
      {hasMoney && <PriceFoot takeoff={takeoff} table={table} price={price} which={which} />}
    </table>
  );
}

/** Rows that a row before them has added up already. */
const PART_OF_ROW = new Set(['fieldOf', 'tightSpot', 'edge.wall', 'edge.obstruction', 'edge.drop']);

function Row({ row, zones }: { readonly row: TableRow; readonly zones: LineTable['zones'] }): ReactElement {
  const names = useNames();
  const { which, sort } = useWayToRead();
  const unit = unitShown(row.unit, useUnits());
  const name = names.row(row);
  const cell = (of: TableCell | null): ReactElement => (
    <QuantityCell cell={of} name={name} unit={row.unit} which={which} />
  );
  return (
    <tr>
      <th scope="row" className={cx(sort === null && PART_OF_ROW.has(row.code) && css.part)}>
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
