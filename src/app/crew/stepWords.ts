import type { ZoneStep } from '../../exchange/zoneSteps.ts';
import { figureText, showArea, showRun } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import { abrasiveTerm } from '../prep/passName.ts';
import { findingRowOf } from '../../takeoff/rates/findings.ts';
import { methodOf } from '../../takeoff/rates/methods.ts';
import { unitSign } from '../parts/Figure.tsx';
import { crewText } from '../../words/siteWords.ts';

/** A step in large type and the line under it. `csp` is the zone's profile, for what the edge must reach. */
export function stepWords(step: ZoneStep, units: Units, csp: string | null): { readonly main: string; readonly more: string } {
  const run = (metres: number): string => figureText(showRun(metres, units));
  const area = (m2: number): string => unitSign(figureText(showArea(m2, units)));
  switch (step.kind) {
    case 'finding': {
      const row = findingRowOf(step.finding.kind);
      return { main: crewText.findingDo(step.finding.tag, row?.term ?? step.finding.kind), more: [row?.treatment, area(step.areaM2)].filter(Boolean).join(', ') };
    }
    case 'cracks':
      return { main: crewText.chase(step.tags.join(', ')), more: `${run(step.metres)}, ${crewText.rigid}` };
    case 'pass': {
      const { pass } = step;
      const method = methodOf(pass.method)?.term ?? pass.method;
      const machine = pass.machine?.name ?? method;
      const abrasive = abrasiveTerm(pass.abrasive);
      const times = pass.times > 1 ? crewText.timesOver(pass.times) : null;
      return abrasive ? { main: abrasive, more: [machine, times].filter(Boolean).join(', ') } : { main: machine, more: times ?? crewText.once };
    }
    case 'edges': {
      const tool = abrasiveTerm(step.abrasive) ?? methodOf(step.method)?.term ?? step.method;
      const tight = step.tightTags.length > 0 ? crewText.tight(step.tightTags.join(', ')) : null;
      const hand = step.tightTags.length === 0 && step.handM2 >= 0.05 ? crewText.handArea(area(step.handM2)) : null;
      const times = step.times > 1 ? crewText.timesOver(step.times) : null;
      return { main: crewText.edges(csp ? crewText.to(csp) : ''), more: [tool, run(step.metres), tight, hand, times].filter(Boolean).join(', ') };
    }
    case 'joints':
      return { main: crewText.joints(step.tags.join(', ')), more: `${run(step.metres)}, ${crewText.jointsFilled}` };
    case 'profile':
      return { main: crewText.profileCheck, more: csp ?? '' };
    case 'release':
      return { main: crewText.release, more: crewText.holdPoint };
  }
}
