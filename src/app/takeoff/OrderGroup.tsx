import type { ReactElement } from 'react';
import css from './OrderList.module.css';
import { OrderFigure } from './OrderFigure.tsx';
import { cx } from '../look/cx.ts';
import { Pictogram } from '../parts/Pictogram.tsx';
import { useDoc } from '../plan.ts';
import { cautionPictogram } from '../../exchange/cautionPictogram.ts';
import { kindText, summed } from '../../exchange/orderRows.ts';
import type { Line } from '../../takeoff/line.ts';
import type { OrderedGroup, OrderKind, OrderRow } from '../../takeoff/orderTable.ts';
import { itemWords, orderGroupWords, orderText, orderTitleOf, wasteText } from '../../words/orderWords.ts';
import { cautionWords } from '../../words/takeoffWords.ts';

interface OrderGroupProps {
  readonly group: OrderedGroup;
  /** All lines of the takeoff: what waits stands with the discs that are glued. */
  readonly lines: readonly Line[];
}

/** A group of the list with its items, and under them what can hurt. */
export function OrderGroup({ group: { group, rows, cautions }, lines }: OrderGroupProps): ReactElement {
  const wait = group === 'tooling' ? lines.find((line) => line.code === 'glueWait') : undefined;
  const items = new Set(rows.map(({ item }) => item.item));
  const notes = [
    ...(items.has('drum') ? [wasteText.slurry] : []),
    ...(items.has('dustBag') || items.has('rubbleSack') ? [wasteText.sample] : []),
  ];
  return (
    <tbody>
      <tr className={css.group}>
        <th scope="rowgroup" colSpan={4}>
          {orderGroupWords[group]}
        </th>
      </tr>
      {rows.map((row) => (
        <Item key={row.item.item} row={row} />
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
          <td colSpan={4}>
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

/** One item; its only kind stands under its name, several in rows of their own. */
function Item({ row }: { readonly row: OrderRow }): ReactElement {
  const { item, used, order, left, kinds } = row;
  const name = itemWords[item.item] ?? item.item;
  const only = kinds.length === 1 ? kinds[0] : undefined;
  const onlyWords = useDoc((doc) => (only ? kindText(doc, only.kind) : ''));
  return (
    <>
      <tr>
        <th scope="row">
          {name}
          {only && <small>{onlyWords}</small>}
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
          />
        </td>
        <td>
          <OrderFigure lines={[left]} quantity={left.quantity} unit={item.unit} name={`${name}, ${orderText.left}`} />
        </td>
      </tr>
      {!only && kinds.map((kind) => <Kind key={kind.kind} kind={kind} row={row} />)}
    </>
  );
}

function Kind({ kind, row }: { readonly kind: OrderKind; readonly row: OrderRow }): ReactElement {
  const { item } = row;
  const words = useDoc((doc) => kindText(doc, kind.kind));
  const name = `${itemWords[item.item] ?? item.item}, ${words}`;
  return (
    <tr>
      <th scope="row" className={css.part}>
        {words}
      </th>
      <td className={css.part}>
        <OrderFigure lines={kind.used} quantity={summed(kind.used)} unit={item.unit} name={name} />
      </td>
      <td className={cx(css.carry, css.part)}>
        <OrderFigure lines={[kind.packs]} quantity={kind.packs.quantity} unit={item.packUnit} name={name} />
      </td>
      <td>{null}</td>
    </tr>
  );
}
