import { abrasives } from '../../takeoff/rates/abrasives.ts';
import { methodOf } from '../../takeoff/rates/methods.ts';

/** What a pass is called: its abrasive if it has one, else its method. */
export function passName(method: string, abrasive: string | null): string {
  const term = abrasiveTerm(abrasive);
  return term ?? methodOf(method)?.term ?? method;
}

export function abrasiveTerm(abrasive: string | null | undefined): string | null {
  if (!abrasive) return null;
  return abrasives.find((row) => row.id === abrasive)?.term ?? abrasive;
}
