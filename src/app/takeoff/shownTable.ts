import { lineTable, type LineTable } from '../../takeoff/lineTable.ts';
import type { Takeoff } from '../../takeoff/port.ts';

/** The table as the screen shows it: that of files and paper, without money where somebody has put it away. */
export function shownTable(takeoff: Takeoff, withMoney: boolean): LineTable {
  const table = lineTable(takeoff);
  return { ...table, groups: table.groups.filter((group) => withMoney || group.trade !== 'money') };
}
