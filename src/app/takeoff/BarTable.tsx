import { useMemo, useState, type ReactElement } from 'react';
import css from './BarTable.module.css';
import { BarFigure } from './BarFigure.tsx';
import { BarsInColumn } from './BarsInColumn.tsx';
import type { BarsDrawn } from './drawBars.ts';
import type { DriverBar } from './driverBars.ts';
import { cx } from '../look/cx.ts';
import { Button } from '../parts/Button.tsx';
import { useSession } from '../session.ts';
import { driverWords } from '../../words/workWords.ts';

/** So many bars say what matters; the rest is there when asked for. */
const FIRST = 8;

interface BarTableProps {
  readonly title: string;
  readonly note: string;
  /** What the first column holds, and the last one. */
  readonly of: string;
  readonly figureOf: string;
  readonly bars: readonly DriverBar[];
  readonly from: BarsDrawn['from'];
  readonly likely?: number;
  readonly show: (value: number) => string;
  readonly unit: string;
}

/** A chart that is a table: names and figures are cells, and the bars stand in a column between them. */
export function BarTable({
  title,
  note,
  of,
  figureOf,
  bars,
  from,
  likely = 0,
  show,
  unit,
}: BarTableProps): ReactElement {
  const [all, setAll] = useState(false);
  const why = useSession((now) => now.why);
  const shown = useMemo(() => (all ? bars : bars.slice(0, FIRST)), [all, bars]);
  const asked = shown.find((bar) => bar.why !== null && bar.why === why)?.key ?? null;
  return (
    <section className={css.chart} aria-label={title}>
      <h2>{title}</h2>
      <p>{note}</p>
      <table className={cx(css.table, from === 'likely' && css.tall)}>
        <thead>
          <tr>
            <th scope="col">{of}</th>
            <th scope="col" className={css.scale}>
              <span className="forReaders">{driverWords.bar}</span>
              <BarsInColumn part="scale" bars={shown} from={from} likely={likely} asked={asked} tick={show} />
            </th>
            <th scope="col">{figureOf}</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((bar, i) => (
            <tr key={bar.key} className={cx(bar.key === asked && css.asked)}>
              <th scope="row">
                <span className={css.name}>{bar.name}</span>
                {bar.more !== '' && <small>{bar.more}</small>}
              </th>
              {i === 0 && (
                <td rowSpan={shown.length} className={css.bars}>
                  <BarsInColumn part="bars" bars={shown} from={from} likely={likely} asked={asked} tick={show} />
                </td>
              )}
              <td>
                <BarFigure bar={bar} from={from} show={show} unit={unit} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {bars.length > FIRST && (
        <div className={css.more}>
          <Button size="desk" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? driverWords.fewer : driverWords.all(bars.length)}
          </Button>
        </div>
      )}
    </section>
  );
}
