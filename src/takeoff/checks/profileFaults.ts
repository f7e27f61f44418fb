import { profileCheck } from '../profile.ts';
import { fault, type Check } from './check.ts';

/** A zone whose profile is not known, is not reached, or whose work nobody has planned. */
export const profileFaults: Check = ({ zones }) =>
  zones.flatMap(({ prep }) => {
    if (!prep.record) return [];
    const { required, field, edge } = profileCheck(prep);
    const id = prep.record.id;
    if (!required) return [fault(id, 'profileMissing')];
    return [
      ...(prep.planned ? [] : [fault(id, 'recipeMissing')]),
      ...(field.reach === 'ok' || field.reach === 'mockUp' ? [] : [fault(id, 'profileNotReached')]),
      ...(edge.reach === 'ok' || edge.reach === 'mockUp' ? [] : [fault(id, 'edgeProfileNotReached')]),
    ];
  });
