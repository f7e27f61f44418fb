import type { PictogramName } from '../canvas/paint/pictograms.ts';
import type { Caution } from '../takeoff/cautions.ts';

/** The drawing beside each caution; the line on local law stands alone. */
export const cautionPictogram: Readonly<Record<Caution, PictogramName | null>> = {
  asbestos: 'unknownLayer',
  lead: 'unknownLayer',
  locate: 'locate',
  gas: 'gas',
  fall: 'fall',
  silica: 'vacuum',
  silicaNotListed: 'vacuum',
  vacuumBetweenPasses: 'vacuum',
  earsEyes: 'earsEyes',
  wheel: 'chips',
  vibration: 'vibration',
  chips: 'chips',
  electric: 'electric',
  heavy: 'heavy',
  rotating: 'keepOut',
  shot: 'slips',
  jet: 'jet',
  chemical: 'chemical',
  acidAndHypochlorite: 'chemical',
  hypochlorite: 'chemical',
  fire: 'fire',
  fumes: 'chemical',
  slips: 'slips',
  rideOn: 'heavy',
  resin: 'chemical',
  localLaw: null,
};
