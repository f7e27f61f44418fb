import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import { cx } from '../look/cx.ts';
import { abrasiveTerm } from './passName.ts';
import { useZoneRecipe } from './useZoneRecipe.ts';
import { cspText } from './zoneNames.ts';
import type { Held } from '../../model/doc.ts';
import { edgeToolsFor, profileCheck, type ReachOf } from '../../takeoff/profile.ts';
import { methodOf } from '../../takeoff/rates/methods.ts';
import { edgeReaches } from '../../words/prepWords.ts';
import { reachWords } from '../../words/takeoffWords.ts';
import { prepText } from '../../words/stageWords.ts';

/** Whether the recipe reaches the profile, in the field and at the edge, and if not why. */
export function ProfileCheck({ zone }: { readonly zone: Held<'zone'> }): ReactElement | null {
  const { prep } = useZoneRecipe(zone);
  const check = profileCheck({ ...prep, record: zone });
  if (!check.required) return null;
  return (
    <section className={css.section}>
      <h3>
        {prepText.profileCheck}: {cspText(check.required)}
      </h3>
      <dl>
        <ReachLine where={prepText.inField} of={check.field} />
        <ReachLine where={prepText.atEdge} of={check.edge} />
      </dl>
      {check.edge.reach !== 'ok' && check.edge.reach !== 'mockUp' && (
        <p className={css.note}>
          {prepText.edgeMust} {edgeReaches(edgeToolsFor(check.required).map((row) => row.term))}
        </p>
      )}
    </section>
  );
}

function ReachLine({ where, of }: { readonly where: string; readonly of: ReachOf }): ReactElement {
  const fails = of.reach !== 'ok' && of.reach !== 'mockUp';
  const tool =
    of.method === null
      ? null
      : [methodOf(of.method)?.term ?? of.method, abrasiveTerm(of.abrasive)].filter(Boolean).join(', ');
  const gives = cspText(of.gives);
  return (
    <div className={cx(css.check, fails && css.failing)}>
      <dt>{where}</dt>
      <dd>
        {reachWords[of.reach]}
        {tool && <span>{gives ? prepText.toolGives(tool, gives) : tool}</span>}
      </dd>
    </div>
  );
}
