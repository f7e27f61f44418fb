import type { RecordId } from '../../model/cell.ts';
import { keptOutBy } from '../keptOut.ts';
import { fault, type Check } from './check.ts';

/** A way through that keeps a machine out of floor it could work. */
export const gapTooNarrow: Check = ({ zones }) =>
  zones.flatMap(({ measure }) =>
    measure.tight.flatMap((piece) => {
      const by = keptOutBy(piece);
      return by ? [fault(by.passage.id.split('#')[0] as RecordId, 'gapTooNarrow', piece.at)] : [];
    }),
  );
