import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import { CautionList } from './CautionList.tsx';
import { useZoneRecipe } from './useZoneRecipe.ts';
import type { Held } from '../../model/doc.ts';
import { prepText } from '../../words/stageWords.ts';

export function ZoneCautions({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const { prep } = useZoneRecipe(zone);
  return (
    <section className={css.section}>
      <h3>{prepText.cautions}</h3>
      <CautionList prep={prep} />
    </section>
  );
}
