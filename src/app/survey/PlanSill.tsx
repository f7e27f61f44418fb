import type { ReactElement } from 'react';
import type { Layout } from '../look/useLayout.ts';
import { Sill } from '../parts/Sill.tsx';
import { useDoc, useFloor, useJob, useSettledTakeoff, useTakeoff, useUnits } from '../plan.ts';
import { askWhy, type Stage } from '../session.ts';
import { surveyText } from '../../words/surveyWords.ts';
import { applyCells } from '../../model/doc.ts';
import { sillFigure, type SillFigure, type SillName } from './sillItems.ts';
import { useHand } from './hand.ts';
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
  const { takeoff, stale } = useTakeoff();
  const settled = useSettledTakeoff();
  const cells = useHand((now) => now.draft?.cells) ?? [];
  const doc = useDoc((now) => now);
  const hasMoney = useHasMoney();
  const names = SHOWN[stage][layout === 'phoneWide' ? 'phone' : layout].filter((name) => hasMoney || name !== 'price');
  const shared = { floor: floor?.id ?? '', units, currency };
  const shownDoc = cells.length > 0 ? applyCells(doc, cells) : doc;
  const same = ({ figure }: SillFigure, other: SillFigure): boolean => figure?.figure === other.figure?.figure;
  const items = names.map((name) => {
    const now = sillFigure(name, { ...shared, doc: shownDoc, takeoff });
    const before = sillFigure(name, { ...shared, doc, takeoff: settled });
    const { why } = now;
    return {
      key: now.key,
      label: now.label,
      figure: now.figure,
      live: cells.length > 0 && !same(now, before),
      ...(why !== null && cells.length === 0 ? { onAsk: () => askWhy(why) } : {}),
    };
  });
  return <Sill label={surveyText.sill} items={items} stale={stale} className={className} />;
}
