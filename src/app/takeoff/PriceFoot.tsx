import type { ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { QuantityCell } from './QuantityCell.tsx';
import { moneyOnScreen } from './showQuantity.ts';
import type { Which } from './wayToRead.ts';
import { useSeveralFloors } from './useSeveralFloors.ts';
import { useJob } from '../plan.ts';
import type { Range } from '../../takeoff/line.ts';
import type { LineTable, TableCell, TableRow } from '../../takeoff/lineTable.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { questionsText } from '../../words/stageWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

interface PriceFootProps {
  readonly takeoff: Takeoff;
  readonly table: LineTable;
  /** The price of all and its shares; null while everything is held. */
  readonly price: TableRow | null;
  readonly which: Which;
}

/** The price of each zone and of all, and its range; "held" where a hold forbids one. */
export function PriceFoot({ takeoff, table, price, which }: PriceFootProps): ReactElement {
  const currency = useJob()?.currency ?? 'USD';
  const severalFloors = useSeveralFloors();
  const sample = takeoff.notices.includes('samplePrices');
  const name = price ? takeoffText.priceOf(takeoffText[which].toLowerCase()) : takeoffText.heldTitle;
  const rangeOf = (range: Range | null | undefined): string =>
    range ? takeoffText.from(moneyOnScreen(range.low, currency), moneyOnScreen(range.high, currency)) : '';
  const cellOf = (cell: TableCell | null | undefined, held: boolean): ReactElement | string =>
    held || !cell ? held ? takeoffText.held : '' : <QuantityCell cell={cell} name={name} unit="minor" which={which} />;
  return (
    <tfoot>
      <tr className={css.price}>
        <th scope="row">
          {name}
          {price && sample && <small>{questionsText.sample}</small>}
          {price && severalFloors && <small>{takeoffText.onlyThisFloor}</small>}
        </th>
        {table.zones.map((zone) => (
          <td key={zone.id}>{cellOf(price?.cells.get(zone.id), zone.held !== null)}</td>
        ))}
        <td className={css.total}>{cellOf(price?.total, price === null)}</td>
      </tr>
      {price && (
        <tr className={css.range}>
          <th scope="row">{takeoffText.lowToHigh}</th>
          {table.zones.map((zone) => (
            <td key={zone.id}>{rangeOf(price.cells.get(zone.id)?.quantity)}</td>
          ))}
          <td className={css.total}>{rangeOf(price.total?.quantity)}</td>
        </tr>
      )}
    </tfoot>
  );
}
