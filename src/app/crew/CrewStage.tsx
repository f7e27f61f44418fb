import { useState, type ReactElement } from 'react';
import css from './CrewStage.module.css';
import { MapSheets } from './MapSheets.tsx';
import { ZoneCards } from './ZoneCards.tsx';
import { useLayout } from '../look/useLayout.ts';
import { Choice } from '../parts/Choice.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { useTakeoff } from '../plan.ts';
import { PlanCanvas } from '../survey/PlanCanvas.tsx';
import { crewText } from '../../words/siteWords.ts';

type View = 'cards' | 'map';
const views = (['cards', 'map'] as const).map((value) => ({ value, words: crewText.sheets[value] }));

/** What leaves for the site: the printed map, and the zone cards on a phone. No hours, no money. */
export function CrewStage(): ReactElement {
  const layout = useLayout();
  const [view, setView] = useState<View>(layout === 'desk' ? 'map' : 'cards');
  const { takeoff } = useTakeoff();
  if (!takeoff || takeoff.blocked) return <EmptyState title={crewText.nothing} sentence={crewText.nothingHelp} />;
  return (
    <div className={css.crew} data-layout={layout}>
      <div className={css.views}>
        <Choice label={crewText.title} quiet value={view} options={views} onChoose={setView} />
      </div>
      {view === 'map' ? (
        <MapSheets />
      ) : (
        <div className={css.site}>
          <PlanCanvas className={css.plan} />
          <div className={css.cards}>
            <ZoneCards />
          </div>
        </div>
      )}
    </div>
  );
}
