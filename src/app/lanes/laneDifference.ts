import { figureText, showHours } from '../../model/showNumber.ts';
import { lanesText } from '../../words/laneWords.ts';

/** How far the two opinions are apart, h: the difference of the figures as they are shown, so that the eye can check it. */
export function laneDifference(lanesH: number, rateH: number): string {
  const apart = Number(lanesH.toFixed(1)) - Number(rateH.toFixed(1));
  if (Math.abs(apart) < 0.05) return lanesText.same;
  const hours = figureText(showHours(Math.abs(apart)));
  return apart > 0 ? lanesText.more(hours) : lanesText.less(hours);
}
