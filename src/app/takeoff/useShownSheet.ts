import { driverBars } from './driverBars.ts';
import { driverSheet } from './driverSheet.ts';
import { useWayToRead } from './wayToRead.ts';
import { shownTable } from './shownTable.ts';
import { sortedTable, sortedWork } from './sortRows.ts';
import { useHasMoney } from './useHasMoney.ts';
import { useNames } from './useNames.ts';
import { useWorkName } from './useWorkName.ts';
import { planStoreNow, useJob, useUnits } from '../plan.ts';
import type { SheetCell } from '../../exchange/sheetCells.ts';
import { takeoffSheet } from '../../exchange/takeoffSheet.ts';
import { workSheet } from '../../exchange/workSheet.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { workList } from '../../takeoff/workList.ts';

/** What is shown as cells: the same rows in the same order, plain numbers in the units of the screen. */
export function useShownSheet(takeoff: Takeoff): () => SheetCell[][] {
  const { way, which, sort } = useWayToRead();
  const names = useNames();
  const workName = useWorkName();
  const units = useUnits();
  const hasMoney = useHasMoney();
  const currency = useJob()?.currency ?? '';
  return () => {
    const doc = planStoreNow().getState();
    switch (way) {
      case 'work':
      case 'phases': {
        const groups = sortedWork(workList(takeoff, way === 'work' ? 'zone' : 'phase'), sort, workName);
        return workSheet(doc, takeoff, groups, currency, units);
      }
      case 'drivers':
        return driverSheet(driverBars(takeoff, { doc, names, units, currency }), currency);
      default:
        return takeoffSheet(doc, takeoff, currency, {
          table: sortedTable(shownTable(takeoff, hasMoney), sort, which, names.row),
          units,
        });
    }
  };
}
