import type { DriverBar, DriverBars } from './driverBars.ts';
import { rowUnit } from '../../exchange/takeoffRows.ts';
import { tidy, type SheetCell } from '../../exchange/sheetCells.ts';
import { driverWords, workText } from '../../words/workWords.ts';

/** The bars of what drives the price as cells; money in main units. */
export function driverSheet({ moves, money, hours }: DriverBars, currency: string): SheetCell[][] {
  const rows = (part: string, bars: readonly DriverBar[], unit: string): SheetCell[][] => {
    // Hours are hours in feet and in metres.
    const shown = rowUnit(unit, currency, 'metric');
    return bars.map(({ name, more, low, likely, high }) => [
      part,
      name,
      more,
      ...[low, likely, high].map((value) => tidy(value / shown.worth)),
      shown.unit,
    ]);
  };
  return [
    [
      driverWords.part,
      workText.work,
      driverWords.uncertain,
      workText.low,
      workText.likely,
      workText.high,
      workText.unit,
    ],
    ...rows(driverWords.moves, moves, 'minor'),
    ...rows(driverWords.money, money, 'minor'),
    ...rows(driverWords.hours, hours, 'h'),
  ];
}
