import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import { cautionPictogram } from '../../exchange/cautionPictogram.ts';
import { cx } from '../look/cx.ts';
import { Pictogram } from '../parts/Pictogram.tsx';
import { useDoc, useFloor, useTakeoff } from '../plan.ts';
import { zoneCautions } from '../../takeoff/cautions.ts';
import type { ZonePrep } from '../../takeoff/prep.ts';
import { zoneCautionsAsk } from '../../takeoff/zoneCautionsAsk.ts';
import { cautionWords } from '../../words/takeoffWords.ts';

interface CautionListProps {
  readonly prep: ZonePrep;
  /** Crew reads it in larger type. */
  readonly large?: boolean;
}

/** What can hurt at this zone's work, with its drawing and words; it always ends with the law of the place. */
export function CautionList({ prep, large = false }: CautionListProps): ReactElement | null {
  const floor = useFloor();
  const { takeoff } = useTakeoff();
  const cautions = useDoc((doc) => (floor && takeoff ? zoneCautions(zoneCautionsAsk(doc, takeoff, prep)) : []));
  if (cautions.length === 0) return null;
  return (
    <ul className={cx(css.cautions, large && css.large)}>
      {cautions.map((caution) => {
        const name = cautionPictogram[caution];
        return (
          <li key={caution} className={name ? css.caution : css.law}>
            {name && <Pictogram name={name} />}
            <span>{cautionWords[caution]}</span>
          </li>
        );
      })}
    </ul>
  );
}
