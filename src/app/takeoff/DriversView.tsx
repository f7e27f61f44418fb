import { useCallback, useMemo, type ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { BarTable } from './BarTable.tsx';
import { driverBars } from './driverBars.ts';
import { namesIn } from './names.ts';
import { moneyOnScreen } from './showQuantity.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useDoc, useFloor, useJob, useUnits } from '../plan.ts';
import { showHours } from '../../model/showNumber.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { driverWords } from '../../words/workWords.ts';

/** What drives the price: where money and hours go, and which number moves the price how far. Each bar answers why. */
export function DriversView({ takeoff }: { readonly takeoff: Takeoff }): ReactElement {
  const doc = useDoc((now) => now);
  const floor = useFloor()?.id ?? null;
  const units = useUnits();
  const currency = useJob()?.currency ?? 'USD';
  const money = useCallback((minor: number): string => moneyOnScreen(minor, currency), [currency]);
  const bars = useMemo(
    () => driverBars(takeoff, { doc, names: namesIn(doc, floor, units), units, currency }),
    [takeoff, doc, floor, units, currency],
  );
  if (bars.priceMinor === null) return <EmptyState title={driverWords.title} sentence={driverWords.none} />;
  return (
    <div className={css.drivers}>
      <BarTable
        title={driverWords.moves}
        note={bars.moves.length === 0 ? driverWords.noMoves : driverWords.movesNote(money(bars.priceMinor))}
        of={driverWords.uncertain}
        figureOf={driverWords.priceThen}
        bars={bars.moves}
        from="likely"
        likely={bars.priceMinor}
        show={money}
        unit=""
      />
      <BarTable
        title={driverWords.money}
        note={driverWords.moneyNote}
        of={driverWords.kind}
        figureOf={driverWords.likely}
        bars={bars.money}
        from="zero"
        show={money}
        unit=""
      />
      <BarTable
        title={driverWords.hours}
        note={driverWords.hoursNote}
        of={driverWords.work}
        figureOf={driverWords.likely}
        bars={bars.hours}
        from="zero"
        show={hours}
        unit="h"
      />
    </div>
  );
}

function hours(value: number): string {
  return showHours(value).figure;
}
