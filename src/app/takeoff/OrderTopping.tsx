import type { ReactElement } from 'react';
import css from './OrderList.module.css';
import { OrderFigure } from './OrderFigure.tsx';
import { SandPatch } from './SandPatch.tsx';
import { useNames } from './useNames.ts';
import type { Line } from '../../takeoff/line.ts';
import { toppingRows } from '../../takeoff/orderTable.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { orderText } from '../../words/orderWords.ts';

/** What the layer of the topping needs in each zone: the film, and what the texture takes besides. */
export function OrderTopping({ takeoff }: { readonly takeoff: Takeoff }): ReactElement | null {
  const names = useNames();
  const rows = toppingRows(takeoff);
  if (rows.length === 0) return null;
  const profiles = [...new Set(rows.flatMap(({ profiles: own }) => own))].toSorted((a, b) => a - b);
  const figure = (line: Line | null): ReactElement | null =>
    line && <OrderFigure lines={[line]} quantity={line.quantity} unit={line.unit} name={names.line(line)} />;
  return (
    <section className={css.topping}>
      <h3>{orderText.topping}</h3>
      <p>{orderText.toppingNote}</p>
      <table className={css.table} aria-label={orderText.topping}>
        <thead>
          <tr>
            <th scope="col">{orderText.zone}</th>
            <th scope="col">{orderText.film}</th>
            <th scope="col">{orderText.texture}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ zone, film, texture, thin }) => (
            <tr key={zone}>
              <th scope="row">
                {names.zone(zone)}
                {thin && <small>{orderText.thinFilm}</small>}
              </th>
              <td>{figure(film)}</td>
              <td className={css.carry}>{figure(texture)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {profiles.length > 0 && <SandPatch profiles={profiles} />}
    </section>
  );
}
