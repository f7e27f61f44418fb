import { FIRST_CAMERA, type Camera } from '../../canvas/camera.ts';
import { floorNow } from '../plan.ts';
import type { Session } from '../session.ts';

export function cameraOf(session: Pick<Session, 'cameras'>): Camera {
  const floor = floorNow();
  return (floor && session.cameras[floor.id]) || FIRST_CAMERA;
}
