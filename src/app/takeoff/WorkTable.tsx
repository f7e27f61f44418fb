import type { ReactElement } from 'react';
import css from './WorkTable.module.css';
import { SortHead } from './SortHead.tsx';
import { BY_NAME } from './sortRows.ts';
import { WorkFoot } from './WorkFoot.tsx';
import { WorkHeading } from './WorkHeading.tsx';
import { WorkLine } from './WorkLine.tsx';
import { useWorkName } from './useWorkName.ts';
import { useLayout } from '../look/useLayout.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import type { WorkGroup } from '../../takeoff/workList.ts';
import { workText } from '../../words/workWords.ts';

interface WorkTableProps {
  readonly takeoff: Takeoff;
  readonly groups: readonly WorkGroup[];
}

/** Work as a list: each zone or phase a heading, under it what is done there, how much of it and for how many hours. */
export function WorkTable({ takeoff, groups }: WorkTableProps): ReactElement {
  const narrow = useLayout() === 'phone';
  const nameOf = useWorkName();
  return (
    <table className={css.table} aria-label={workText.listCaption} data-narrow={narrow || undefined}>
      <thead>
        <tr>
          <SortHead by={BY_NAME} words={workText.work} />
          <SortHead by="quantity" words={workText.quantity} className={css.quantityHead} />
          {!narrow && <SortHead by="low" words={workText.low} />}
          <SortHead by="likely" words={narrow ? workText.hoursHead : workText.likely} />
          {!narrow && <SortHead by="high" words={workText.highHours} />}
        </tr>
      </thead>
      {groups.map((group) => (
        <tbody key={group.key}>
          <WorkHeading takeoff={takeoff} group={group} narrow={narrow} />
          {group.rows.map((row) => (
            <WorkLine
              key={row.key}
              name={nameOf(row)}
              quantity={row.worked}
              quantityLines={row.worked?.lines ?? []}
              hours={row.hours}
              narrow={narrow}
            />
          ))}
        </tbody>
      ))}
      <WorkFoot takeoff={takeoff} narrow={narrow} />
    </table>
  );
}
