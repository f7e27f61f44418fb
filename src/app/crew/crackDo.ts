import { showSize } from '../../model/showLength.ts';
import { figureText } from '../../model/showNumber.ts';
import type { Crack } from '../../model/records/crack.ts';
import type { Units } from '../../model/units.ts';
import { chaseSection, isChased } from '../../takeoff/crackClass.ts';
import { crewText } from '../../words/siteWords.ts';

/** What a crew does about one crack. A working crack is never filled rigid; a structural one waits for an engineer. */
export function crackDo(crack: Crack, units: Units): string {
  if (crack.behaviour === 'working') return crewText.crackDo.working;
  if (crack.behaviour === 'structural') return crewText.crackDo.structural;
  if (!isChased(crack)) return crewText.crackDo.hairline;
  const { width, depth } = chaseSection(crack);
  const size = `${showSize(width, units).figure} x ${figureText(showSize(depth, units))}`;
  return crack.behaviour === 'notJudged' ? crewText.crackDo.notJudged(size) : crewText.crackDo.fill(size);
}
