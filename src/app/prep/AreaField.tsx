import type { ReactElement } from 'react';
import { unitSign } from '../parts/Figure.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { useUnits } from '../plan.ts';
import { showArea } from '../../model/showNumber.ts';
import { M2_PER_FT2 } from '../../model/units.ts';

interface AreaFieldProps {
  readonly label: string;
  readonly areaM2: number | null;
  readonly say?: string;
  /** null: the field was emptied. */
  readonly onSet: (areaM2: number | null) => void;
}

/** An area as people type it, in m2 or ft2 by the units of the job; it is kept in m2. */
export function AreaField({ label, areaM2, say, onSet }: AreaFieldProps): ReactElement {
  const units = useUnits();
  const one = units === 'imperial' ? M2_PER_FT2 : 1;
  return (
    <NumberField
      label={label}
      value={areaM2 === null ? null : areaM2 / one}
      min={0}
      optional
      unit={unitSign(showArea(0, units).unit)}
      say={say ?? null}
      onSet={(value) => onSet(value === null ? null : value * one)}
    />
  );
}
