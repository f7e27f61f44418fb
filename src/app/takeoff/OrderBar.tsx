import type { ReactElement } from 'react';
import css from './OrderList.module.css';
import { saveText } from './saveText.ts';
import { Button } from '../parts/Button.tsx';
import { planStoreNow, useJob } from '../plan.ts';
import { say } from '../session.ts';
import { orderCsv, orderTabbed } from '../../exchange/orderRows.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { orderText } from '../../words/orderWords.ts';

/** What the list is, and its way out: to a spreadsheet, or as a file. */
export function OrderBar({ takeoff }: { readonly takeoff: Takeoff }): ReactElement {
  const job = useJob();
  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(orderTabbed(planStoreNow().getState(), takeoff));
      say(orderText.copied);
    } catch {
      say(orderText.notCopied);
    }
  }
  const save = (): Promise<void> =>
    saveText(orderCsv(planStoreNow().getState(), takeoff), `${job?.name ?? 'job'}, ${orderText.file}.csv`, 'text/csv');
  return (
    <div className={css.bar}>
      <div className={css.head}>
        <h2>{orderText.title}</h2>
        <p>{orderText.intro}</p>
      </div>
      <div className={css.buttons}>
        <Button size="desk" onClick={() => void copy()}>
          {orderText.copy}
        </Button>
        <Button size="desk" onClick={() => void save()}>
          {orderText.save}
        </Button>
      </div>
    </div>
  );
}
