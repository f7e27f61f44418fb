import type { RecordId } from '../../model/cell.ts';
import { fault, type Check } from './check.ts';

/** A way through that keeps a machine out of floor it could work. */
export const gapTooNarrow: Check = ({ zones }) =>
  zones.flatMap(({ measure }) =>
    measure.tight.flatMap((piece) =>
      piece.blockedBy ? [fault(piece.blockedBy.passage.id.split('#')[0] as RecordId, 'gapTooNarrow', piece.at)] : [],
    ),
  );
