import { useMemo, type ReactElement } from 'react';
import type { Layout } from '../look/useLayout.ts';
import { Sill } from '../parts/Sill.tsx';
import { useDoc, useFloor, useJob, useSettled, useTakeoff, useTotals, useUnits } from '../plan.ts';
import { askWhy, type Stage } from '../session.ts';
import { surveyText } from '../../words/surveyWords.ts';
import { useDraftedDoc } from './shownDoc.ts';
import { sillFigure, type SillFigure, type SillName, type Sums } from './sillItems.ts';
import { useHasMoney } from '../takeoff/useHasMoney.ts';

/* In Survey the edge is all there is; what of it a hand tool follows beside machine field is for Prep and Takeoff. */
const SHOWN: Readonly<Record<Stage, Readonly<Record<'desk' | 'tablet' | 'phone', readonly SillName[]>>>> = {
  survey: {
    desk: ['net', 'allEdge', 'obstructions', 'cracks', 'page'],
    tablet: ['net', 'allEdge', 'upstands', 'cracks', 'joints'],
    phone: ['net', 'allEdge', 'cracks'],
  },
  prep: {
    desk: ['net', 'field', 'edge', 'tight', 'hours'],
    tablet: ['net', 'field', 'edge', 'tight', 'hours'],
    phone: ['field', 'edge', 'tight'],
  },
  takeoff: {
    desk: ['net', 'field', 'edge', 'tight', 'cracks', 'hours', 'price'],
    tablet: ['net', 'edge', 'hours', 'price'],
    phone: ['hours', 'price'],
  },
  crew: { desk: [], tablet: [], phone: [] },
  handover: { desk: [], tablet: [], phone: [] },
};

interface PlanSillProps {
  readonly stage: Stage;
  readonly layout: Layout;
  readonly className?: string | undefined;
}

/** Running totals, live while the hand moves: what changes under the hand is lit, what waits for its answer is dimmed. */
export function PlanSill({ stage, layout, className }: PlanSillProps): ReactElement {
  const floor = useFloor();
  const units = useUnits();
  const currency = useJob()?.currency ?? 'USD';
  const { takeoff, stale: takeoffStale } = useTakeoff();
  const { totals, stale: totalsStale, answers } = useTotals();
  const settled = useSettled();
  const drafted = useDraftedDoc();
  const doc = useDoc((now) => now);
  const moves = drafted !== doc;
  const hasMoney = useHasMoney();
  const floorId = floor?.id ?? '';

  const figures = useMemo(() => {
    const names = SHOWN[stage][layout === 'phoneWide' ? 'phone' : layout];
    const shared = { floor: floorId, units, currency };
    return (sums: Pick<Sums, 'doc' | 'takeoff' | 'totals'>): readonly SillFigure[] =>
      names.filter((name) => hasMoney || name !== 'price').map((name) => sillFigure(name, { ...shared, ...sums }));
  }, [stage, layout, hasMoney, floorId, units, currency]);
  const before = useMemo(() => figures({ doc, ...settled }), [figures, doc, settled]);
  const now = useMemo(() => figures({ doc: drafted, takeoff, totals }), [figures, drafted, takeoff, totals]);

  const items = now.map(({ key, label, figure, why, waits }, i) => ({
    key,
    label,
    figure,
    stale: waits ? takeoffStale : totalsStale,
    live: moves && figure?.figure !== before[i]?.figure?.figure,
    ...(why !== null && !moves ? { onAsk: () => askWhy(why) } : {}),
  }));
  return <Sill label={surveyText.sill} items={items} answers={answers} className={className} />;
}
