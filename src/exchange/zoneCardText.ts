import { firm } from '../canvas/paint/textWidth.ts';
import { figureText, showArea, showRun } from '../model/showNumber.ts';
import { showFineSize, showLength, showSize } from '../model/showLength.ts';
import type { Crack } from '../model/records/crack.ts';
import type { Units } from '../model/units.ts';
import { chaseSection, isChased } from '../takeoff/crackClass.ts';
import { abrasiveOf } from '../takeoff/rates/abrasives.ts';
import { findingRowOf } from '../takeoff/rates/findings.ts';
import { methodOf } from '../takeoff/rates/methods.ts';
import { crewText } from '../words/siteWords.ts';
import type { ZoneStep } from './zoneSteps.ts';

/** Words for quantities and steps on paper, in the units of the sheet. */

/** Small 2 and 3 instead of m2 and m3. */
function signed(text: string): string {
  return text.replace(/(?<=[a-z])2\b/, '²').replace(/(?<=[a-z])3\b/, '³');
}

export function areaText(areaM2: number, units: Units): string {
  return firm(signed(figureText(showArea(areaM2, units))));
}

export function runText(lengthM: number, units: Units): string {
  return firm(figureText(showRun(lengthM, units)));
}

/** A length as a tape says it: doors, ways in. */
export function tapeText(lengthMm: number, units: Units): string {
  return figureText(showLength(lengthMm, units));
}

export function widthText(widthMm: number, units: Units): string {
  return figureText(showFineSize(widthMm, units));
}

/** What a crew does about one crack. A working crack is never filled rigid; a structural one waits for an engineer. */
export function crackDoText(crack: Crack, units: Units): string {
  if (crack.behaviour === 'working') return crewText.crackDo.working;
  if (crack.behaviour === 'structural') return crewText.crackDo.structural;
  if (!isChased(crack)) return crewText.crackDo.hairline;
  const { width, depth } = chaseSection(crack);
  const size = firm(`${showSize(width, units).figure} x ${figureText(showSize(depth, units))}`);
  return crack.behaviour === 'notJudged' ? crewText.crackDo.notJudged(size) : crewText.crackDo.fill(size);
}

export interface StepText {
  readonly main: string;
  readonly more: string;
}

function joined(parts: readonly (string | null | undefined | false)[]): string {
  return parts.filter((part) => typeof part === 'string' && part !== '').join(', ');
}

function abrasiveTerm(abrasive: string | null): string | null {
  return abrasive ? (abrasiveOf(abrasive)?.term ?? abrasive) : null;
}

/** A step of a zone's card: what, and how. `csp` is the zone's profile, which the edge must reach too. */
export function stepText(step: ZoneStep, units: Units, csp: string | null): StepText {
  switch (step.kind) {
    case 'finding': {
      const row = findingRowOf(step.finding.kind);
      const main = crewText.findingDo(step.finding.tag, row?.term ?? step.finding.kind);
      return { main, more: joined([areaText(step.areaM2, units), row?.treatment]) };
    }
    case 'cracks':
      return {
        main: crewText.chase(step.tags.join(', ')),
        more: joined([runText(step.metres, units), crewText.rigid]),
      };
    case 'pass': {
      const { pass } = step;
      const machine = pass.machine?.name ?? methodOf(pass.method)?.term ?? pass.method;
      const times = pass.times > 1 ? crewText.timesOver(pass.times) : crewText.once;
      const then = step.followers.length > 0 && crewText.thenIn(step.followers.join(crewText.thenNext));
      return { main: machine, more: joined([abrasiveTerm(pass.abrasive), times, then]) };
    }
    case 'edges': {
      const tool = abrasiveTerm(step.abrasive) ?? methodOf(step.method)?.term ?? step.method;
      const tight = step.tightTags.length > 0 ? crewText.tight(step.tightTags.join(', ')) : null;
      // A tight spot has its tag on the map; what is cut off has its hatch and is told by its area.
      const untaggedM2 = tight ? step.cutOffM2 : step.handM2;
      const hand = untaggedM2 >= 0.05 ? crewText.handArea(areaText(untaggedM2, units)) : null;
      const times = step.times > 1 ? crewText.timesOver(step.times) : null;
      const stop = step.stopM > 0 ? crewText.stopLine(runText(step.stopM, units)) : null;
      return {
        main: crewText.edges(csp ? crewText.to(csp) : ''),
        more: joined([tool, runText(step.metres, units), stop, tight, hand, times]),
      };
    }
    case 'upstands': {
      const metres = step.runs.reduce((sum, run) => sum + run.metres, 0);
      const heights = [...new Set(step.runs.map(({ upstand }) => upstand.heightMm))].toSorted((a, b) => a - b);
      const high = heights.map((heightMm) => figureText(showSize(heightMm, units))).join(crewText.and);
      const kinds = [...new Set(step.runs.map(({ upstand }) => crewText.upstandKinds[upstand.kind]))];
      const what = crewText.upstands[step.treat](kinds.join(crewText.and));
      return { main: what, more: joined([runText(metres, units), crewText.high(high)]) };
    }
    case 'joints':
      return {
        main: crewText.joints(step.tags.join(', ')),
        more: joined([runText(step.metres, units), crewText.jointsFilled]),
      };
    case 'profile':
      return { main: crewText.profileCheck, more: csp ?? '' };
    case 'release':
      return { main: crewText.release, more: crewText.holdPoint };
  }
}
