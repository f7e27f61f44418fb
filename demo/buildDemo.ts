import { writeJobFile } from '../src/exchange/jobFile.ts';
import { sha256Hex } from '../src/exchange/sha256.ts';
import { garageDoc } from './garage.ts';
import { workshopDoc } from './workshop.ts';

export { workshopScanSvg } from './workshopScan.ts';
export { SCAN } from './workshopPage.ts';

/** The demo jobs as files, by name. `scan` is the picture of the invented plan, demo/workshop-scan.jpg. */
export function buildDemo(scan: Uint8Array): Record<'workshop' | 'garage', Uint8Array> {
  const hash = sha256Hex(scan);
  return {
    workshop: writeJobFile(workshopDoc(hash), new Map(), new Map([[hash, { bytes: scan, extension: 'jpg' }]])),
    garage: writeJobFile(garageDoc(), new Map(), new Map()),
  };
}
