import { figureText, showHours } from '../../model/showNumber.ts';
import { lanesText } from '../../words/laneWords.ts';

/** How far the two opinions are apart, h, as hours are shown: of two figures that read the same it says so. */
export function laneDifference(lanesH: number, rateH: number): string {
  const apart = Number((lanesH - rateH).toFixed(1));
  if (apart === 0) return lanesText.same;
  const hours = figureText(showHours(Math.abs(apart)));
  return apart > 0 ? lanesText.more(hours) : lanesText.less(hours);
}
