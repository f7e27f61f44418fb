import type { ReactElement } from 'react';
import css from './OrderList.module.css';
import { OrderFigure } from './OrderFigure.tsx';
import { orderFigure } from './orderFigure.ts';
import { cx } from '../look/cx.ts';
import { Pictogram } from '../parts/Pictogram.tsx';
import { useDoc, useUnits } from '../plan.ts';
import { cautionPictogram } from '../../exchange/cautionPictogram.ts';
import { kindText, summed } from '../../exchange/orderRows.ts';
import { figureText } from '../../model/showNumber.ts';
import type { Line } from '../../takeoff/line.ts';
import type { OrderedGroup, OrderKind, OrderRow } from '../../takeoff/orderTable.ts';
import { itemWords, orderGroupWords, orderText, orderTitleOf, wasteText } from '../../words/orderWords.ts';
import { cautionWords } from '../../words/takeoffWords.ts';

interface OrderGroupProps {
  readonly group: OrderedGroup;
  /** All lines of the takeoff: what waits stands with the discs that are glued. */
  readonly lines: readonly Line[];
  /** A narrow screen: what is left over stands under what is carried, without a column of its own. */
  readonly narrow: boolean;
}

/** A group of the list with its items, and under them what can hurt. */
export function OrderGroup({ group: { group, rows, cautions }, lines, narrow }: OrderGroupProps): ReactElement {
  const wait = group === 'tooling' ? lines.find((line) => line.code === 'glueWait') : undefined;
  const columns = narrow ? 3 : 4;
  const items = new Set(rows.map(({ item }) => item.item));
  const notes = [
    ...(items.has('drum') ? [wasteText.slurry] : []),
    ...(items.has('dustBag') || items.has('rubbleSack') ? [wasteText.sample] : []),
  ];
  return (
    <tbody>
      <tr className={css.group}>
        <th scope="rowgroup" colSpan={columns}>
          {orderGroupWords[group]}
        </th>
      </tr>
      {rows.map((row) => (
        <Item key={row.item.item} row={row} narrow={narrow} />
      ))}
      {wait && (
        <tr>
          <th scope="row">{orderTitleOf(wait.code)}</th>
          <td>{null}</td>
          <td>
            <OrderFigure
              lines={[wait]}
              quantity={wait.quantity}
              unit={wait.unit}
              name={orderTitleOf(wait.code) ?? ''}
            />
          </td>
          <td>{null}</td>
        </tr>
      )}
      {(cautions.length > 0 || notes.length > 0) && (
        <tr className={css.cautions}>
          <td colSpan={columns}>
            <ul>
              {cautions.map((caution) => {
                const drawing = cautionPictogram[caution];
                return (
                  <li key={caution}>
                    {drawing && <Pictogram name={drawing} />}
                    <span>{cautionWords[caution]}</span>
                  </li>
                );
              })}
              {notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          </td>
        </tr>
      )}
    </tbody>
  );
}

interface ItemProps {
  readonly row: OrderRow;
  readonly narrow: boolean;
}

/** One item; its only kind stands under its name, several in rows of their own. */
function Item({ row, narrow }: ItemProps): ReactElement {
  const units = useUnits();
  const { item, used, order, spare, left, kinds } = row;
  const name = itemWords[item.item] ?? item.item;
  const only = kinds.length === 1 ? (kinds[0]?.kind ?? '') : '';
  const over = figureText(orderFigure(left.quantity.likely, item.unit, units));
  const notes = [
    ...(spare > 0 ? [orderText.spare(spare)] : []),
    ...(narrow && left.quantity.likely >= 0.005 ? [orderText.over(over)] : []),
  ];
  return (
    <>
      <tr>
        <th scope="row">
          {name}
          {only !== '' && <KindName kind={only} />}
        </th>
        <td>
          <OrderFigure lines={used} quantity={summed(used)} unit={item.unit} name={`${name}, ${orderText.used}`} />
        </td>
        <td className={css.carry}>
          <OrderFigure
            lines={[order]}
            quantity={order.quantity}
            unit={item.packUnit}
            name={`${name}, ${orderText.carry}`}
            notes={notes}
          />
        </td>
        {!narrow && (
          <td>
            <OrderFigure lines={[left]} quantity={left.quantity} unit={item.unit} name={`${name}, ${orderText.left}`} />
          </td>
        )}
      </tr>
      {kinds.length > 1 && kinds.map((kind) => <Kind key={kind.kind} kind={kind} row={row} narrow={narrow} />)}
    </>
  );
}

/** The only kind of an item, under its name. */
function KindName({ kind }: { readonly kind: string }): ReactElement {
  const units = useUnits();
  const { text, on } = useDoc((doc) => kindText(doc, kind, units));
  return <small>{on === null ? text : `${text}, ${on}`}</small>;
}

function Kind({ kind, row: { item }, narrow }: ItemProps & { readonly kind: OrderKind }): ReactElement {
  const units = useUnits();
  const { text, on } = useDoc((doc) => kindText(doc, kind.kind, units));
  const name = `${itemWords[item.item] ?? item.item}, ${text}`;
  return (
    <tr>
      <th scope="row" className={css.part}>
        {text}
        {on !== null && <small>{on}</small>}
      </th>
      <td className={css.part}>
        <OrderFigure lines={kind.used} quantity={summed(kind.used)} unit={item.unit} name={name} />
      </td>
      <td className={cx(css.carry, css.part)}>
        <OrderFigure lines={[kind.packs]} quantity={kind.packs.quantity} unit={item.packUnit} name={name} />
      </td>
      {!narrow && <td>{null}</td>}
    </tr>
  );
}
