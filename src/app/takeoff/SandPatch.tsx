import { useState, type ReactElement } from 'react';
import css from './OrderList.module.css';
import { showQuantity } from './showQuantity.ts';
import { Button } from '../parts/Button.tsx';
import { MeasureField } from '../parts/MeasureField.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { planStoreNow, run, useUnits } from '../plan.ts';
import { say } from '../session.ts';
import { figureText } from '../../model/showNumber.ts';
import { ownRate } from '../../takeoff/rates/rateChanges.ts';
import { textureCode } from '../../takeoff/rates/texture.ts';
import { sandPatchMm } from '../../takeoff/textureLines.ts';
import { orderText } from '../../words/orderWords.ts';

/** A texture depth measured with sand takes the place of the estimate of a profile: ASTM E965. */
export function SandPatch({ profiles }: { readonly profiles: readonly number[] }): ReactElement {
  const units = useUnits();
  const [sandMl, setSand] = useState<number | null>(null);
  const [acrossMm, setAcross] = useState<number | null>(null);
  const depthMm = sandMl !== null && acrossMm !== null ? sandPatchMm(sandMl, acrossMm) : null;
  function keep(csp: number): void {
    if (depthMm === null) return;
    const one = { low: depthMm, likely: depthMm, high: depthMm };
    const change = ownRate(planStoreNow().getState(), textureCode(csp), one, orderText.patchSource);
    if (change && run('setRateRow', { ...change })) say(orderText.patchKept(csp));
  }
  return (
    <details className={css.patch}>
      <summary>{orderText.patch}</summary>
      <div className={css.patchFields}>
        <NumberField label={orderText.patchSand} value={sandMl} onSet={setSand} unit="mL" min={1} max={1000} optional />
        <MeasureField label={orderText.patchAcross} mm={acrossMm} onSet={setAcross} kind="size" minMm={20} optional />
      </div>
      {depthMm === null ? (
        <p>{orderText.patchHelp}</p>
      ) : (
        <>
          <p role="status">{orderText.patchDepth(figureText(showQuantity(depthMm, 'mm', units, 'USD')))}</p>
          <div className={css.buttons}>
            {profiles.map((csp) => (
              <Button key={csp} size="desk" onClick={() => keep(csp)}>
                {orderText.patchKeep(csp)}
              </Button>
            ))}
          </div>
        </>
      )}
    </details>
  );
}
