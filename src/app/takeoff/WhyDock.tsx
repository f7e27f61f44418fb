import { useState, type ReactElement } from 'react';
import css from './WhyDock.module.css';
import { WhyColumn } from './WhyColumn.tsx';
import { WhyLanes } from './WhyLanes.tsx';
import { WhySources } from './WhySources.tsx';
import { showQuantity } from './showQuantity.ts';
import { figureText } from '../../model/showNumber.ts';
import { useNames } from './useNames.ts';
import { useHasMoney } from './useHasMoney.ts';
import { feedsOf, whyLine } from './whyLine.ts';
import { askWhy, light, useSession } from '../session.ts';
import { useJob, useTakeoff, useUnits } from '../plan.ts';
import { Button } from '../parts/Button.tsx';
import { Icon } from '../parts/Icon.tsx';
import type { Line } from '../../takeoff/line.ts';
import { takeoffText, whyText } from '../../words/whyWords.ts';

/** Why a number is what it is: its sum, what it goes into, its rates and their sources. Docked, never a pop-up. */
export function WhyDock(): ReactElement {
  const key = useSession((now) => now.why);
  const { takeoff } = useTakeoff();
  const line = takeoff && key !== null ? whyLine(takeoff, key) : null;
  if (!takeoff || !line) {
    return (
      <div className={css.empty}>
        <h2>{whyText.pick}</h2>
        <p>{whyText.pickHelp}</p>
      </div>
    );
  }
  return <Why key={line.key} line={line} lines={takeoff.lines} />;
}

function Why({ line, lines }: { readonly line: Line; readonly lines: readonly Line[] }): ReactElement {
  const units = useUnits();
  const currency = useJob()?.currency ?? 'USD';
  const lit = useSession((now) => now.lit);
  const hasMoney = useHasMoney();
  const names = useNames();
  const [changing, setChanging] = useState<string | null>(null);
  const show = (value: number): string => figureText(showQuantity(value, line.unit, units, currency));
  const { low, likely, high } = line.quantity;
  const feeds = feedsOf(line.key, lines).filter((other) => hasMoney || other.trade !== 'money');
  return (
    <div className={css.why}>
      <header className={css.head}>
        <div>
          <h2>{whyText.why(show(likely))}</h2>
          <p>{names.line(line)}</p>
        </div>
        <Button size="desk" icon={<Icon name="close" small />} onClick={() => askWhy(null)}>
          {whyText.close}
        </Button>
      </header>
      {line.held !== null && <p className={css.held}>{whyText.heldSays}</p>}
      <section className={css.section}>
        <WhyColumn line={line} />
        {low !== high && <p className={css.range}>{whyText.range(show(low), show(high))}</p>}
      </section>
      <section className={css.section}>
        <h3>{whyText.feeds}</h3>
        {feeds.length === 0 && <p className={css.note}>{whyText.feedsNothing}</p>}
        {feeds.map((other) => (
          <button key={other.key} type="button" className={css.feed} onClick={() => askWhy(other.key)}>
            <span>{names.line(other)}</span>
            <b>
              {other.held === null
                ? figureText(showQuantity(other.quantity.likely, other.unit, units, currency))
                : takeoffText.held}
            </b>
          </button>
        ))}
      </section>
      <WhySources line={line} changing={changing} onChange={setChanging} />
      {line.code === 'hours.machine' && <WhyLanes line={line} changing={changing} onChange={setChanging} />}
      {line.records.length > 0 && (
        <div className={css.section}>
          <Button wide aria-pressed={lit === line.key} onClick={() => light(lit === line.key ? null : line.key)}>
            {lit === line.key ? whyText.shownOnPlan : whyText.showOnPlan}
          </Button>
        </div>
      )}
    </div>
  );
}
