import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import { ProfileCheck } from './ProfileCheck.tsx';
import { RecipeEditor } from './RecipeEditor.tsx';
import { ZoneBesides } from './ZoneBesides.tsx';
import { ZoneCautions } from './ZoneCautions.tsx';
import { ZoneConditions } from './ZoneConditions.tsx';
import { ZoneHolds } from './ZoneHolds.tsx';
import { ZoneLanes } from './ZoneLanes.tsx';
import { ZoneMoney } from './ZoneMoney.tsx';
import { ZonePhase } from './ZonePhase.tsx';
import { ZoneSplit } from './ZoneSplit.tsx';
import { LaidPicker, ZoneSystem } from './ZoneSystem.tsx';
import { usePickedZone } from './usePickedZone.ts';
import { cspText, zoneName, zoneNumber } from './zoneNames.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { Tag } from '../parts/Tag.tsx';
import { TextField } from '../parts/TextField.tsx';
import { run } from '../plan.ts';
import { useSession } from '../session.ts';
import { requiredCsp } from '../../takeoff/profile.ts';
import { prepText } from '../../words/stageWords.ts';

/** Another zone starts at its top: its holds and its split come first. */
function toTop(dock: HTMLDivElement | null): void {
  dock?.parentElement?.scrollTo(0, 0);
}

/** The picked zone: what will be laid, which decides all the rest and so stands first, what the floor gets for it, and how the floor splits between machine and hand. */
export function PrepRight(): ReactElement {
  const zone = usePickedZone();
  const drawing = useSession((now) => now.tool === 'zone');
  if (!zone && drawing) return <EmptyState title={prepText.drawing} sentence={prepText.drawingHelp} />;
  if (!zone) return <EmptyState title={prepText.pickZone} sentence={prepText.pickZoneHelp} />;
  return (
    <div className={css.right} key={zone.id} ref={toTop}>
      <header className={css.head}>
        <Tag zone>{zoneNumber(zone)}</Tag>
        <div>
          <h2>{zoneName(zone)}</h2>
          <p>{cspText(requiredCsp(zone)) ?? prepText.noProfile}</p>
        </div>
      </header>
      {!zone.csp && (
        <div className={css.laid}>
          <LaidPicker zone={zone} />
        </div>
      )}
      <ZoneHolds zone={zone} />
      <ZoneSplit zone={zone} />
      <ZoneMoney zone={zone} />
      <ZoneLanes zone={zone} />
      <section className={css.section}>
        <h3>{prepText.laidTitle}</h3>
        <TextField
          label={prepText.name}
          value={zone.name ?? ''}
          onSet={(name) => run('setField', { id: zone.id, slot: 'name', value: name })}
        />
        <ZoneSystem zone={zone} />
        <ZoneConditions zone={zone} />
      </section>
      <RecipeEditor zone={zone} />
      <ProfileCheck zone={zone} />
      <ZonePhase zone={zone} />
      <ZoneBesides zone={zone} />
      <ZoneCautions zone={zone} />
    </div>
  );
}
