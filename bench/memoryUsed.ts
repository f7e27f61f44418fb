import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** Memory in use after what nobody holds any more has been collected: heap and typed arrays, in MB. */
export function memoryUsedMb(): number {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  collect();
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
}
