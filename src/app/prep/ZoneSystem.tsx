import { useState, type ReactElement } from 'react';
import css from './PrepRight.module.css';
import { Choice } from '../parts/Choice.tsx';
import { MeasureField } from '../parts/MeasureField.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Picker } from '../parts/Picker.tsx';
import { cspText } from './zoneNames.ts';
import { run } from '../plan.ts';
import type { Json } from '../../model/cell.ts';
import type { Held } from '../../model/doc.ts';
import { systems } from '../../takeoff/rates/systems.ts';
import { prepText } from '../../words/stageWords.ts';

const LOWEST = 1;
const HIGHEST = 10;

/** What will be laid on the zone, each with the profile it asks for. */
export function LaidPicker({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const options = systems.map((row) => ({
    value: row.id,
    words: row.term,
    more: cspText({ min: row.csp[0], max: row.csp[1] }) ?? '',
  }));
  return (
    <Picker
      label={prepText.laid}
      value={zone.system?.kind ?? null}
      empty={prepText.noProfile}
      options={options}
      onPick={(kind) => {
        const row = systems.find((each) => each.id === kind);
        const system = { kind, ...(row ? { thicknessMm: usual(row.thicknessMm) } : {}) };
        run('setFields', { ids: [zone.id], fields: { system } });
      }}
    />
  );
}

/** Whether what will be laid asks for the profile, or the profile is asked for outright; and how thick it will be. */
export function ZoneSystem({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const [bare, setBare] = useState(Boolean(zone.csp));
  const set = (fields: Readonly<Record<string, Json>>): boolean => run('setFields', { ids: [zone.id], fields });
  function choose(kind: 'system' | 'bare'): void {
    setBare(kind === 'bare');
    if (kind === 'system' && zone.csp) set({ csp: null });
    if (kind === 'bare' && !zone.csp) set({ csp: { min: 3, max: 3 } });
  }
  function setCsp(min: number, max: number): void {
    set({ csp: { min: Math.min(min, max), max: Math.max(min, max) } });
  }
  return (
    <>
      <Choice
        label={prepText.laid}
        quiet
        value={bare ? 'bare' : 'system'}
        options={[
          { value: 'system', words: prepText.laid },
          { value: 'bare', words: prepText.bareProfile },
        ]}
        onChoose={choose}
      />
      {bare && zone.csp ? (
        <div className={css.pair}>
          <NumberField
            label={prepText.cspFrom}
            value={zone.csp.min}
            min={LOWEST}
            max={HIGHEST}
            decimals={0}
            onSet={(min) => min !== null && setCsp(min, Math.max(min, zone.csp?.max ?? min))}
          />
          <NumberField
            label={prepText.cspTo}
            value={zone.csp.max}
            min={LOWEST}
            max={HIGHEST}
            decimals={0}
            onSet={(max) => max !== null && setCsp(Math.min(max, zone.csp?.min ?? max), max)}
          />
        </div>
      ) : (
        <>
          {zone.system && (
            <MeasureField
              label={prepText.thickness}
              kind="fine"
              mm={zone.system.thicknessMm ?? null}
              optional
              maxMm={200}
              onSet={(mm) =>
                set({ system: { kind: zone.system?.kind ?? '', ...(mm === null ? {} : { thicknessMm: mm }) } })
              }
            />
          )}
        </>
      )}
    </>
  );
}

/** A start within the usual band: its middle, to 0.1 mm. */
function usual([min, max]: readonly [number, number]): number {
  return Math.round(((min + max) / 2) * 10) / 10;
}
