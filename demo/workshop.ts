import type { Doc } from '../src/model/doc.ts';
import { defaultMoneyCells, defaultRateCells } from '../src/takeoff/rates/defaults.ts';
import { placer } from './place.ts';
import { placeWorkshopFloor } from './workshopFloor.ts';
import { placeWorkshopMarks } from './workshopMarks.ts';
import { workshopPage } from './workshopPage.ts';
import { placeWorkshopPrep } from './workshopPrep.ts';

const BY = { by: 'A. Surveyor (invented)', on: '2026-03-02' } as const;

/** The demo job: an invented building on which everything shows. `image` is the hash of its scanned page. */
export function workshopDoc(image: string): Doc {
  const place = placer();
  place.put('job:demo-workshop', {
    name: 'Workshop',
    number: 'Example 1',
    place: 'An invented building',
    customer: 'An invented customer',
    units: 'metric',
    currency: 'USD',
    startedAs: 'warehouse',
    startedOn: '2026-03-02',
    invented: true,
    builtBefore1981: { answer: 'yes', ...BY },
    coatingOrTile: { answer: 'yes', ...BY },
    inSlab: { answer: 'yes', ...BY },
    gasAppliance: { answer: 'unknown', ...BY },
    inSlabLocated: {
      result: 'clear',
      on: '2026-03-04',
      by: 'C. Locator (invented)',
      reference: 'Marked in yellow chalk',
    },
  });
  placeWorkshopFloor(place);
  place.put('page:ground', workshopPage(image));
  placeWorkshopMarks(place);
  placeWorkshopPrep(place);
  place.cells([...defaultRateCells(), ...defaultMoneyCells()]);
  return place.doc();
}
