import { create } from 'zustand';

/** Whether Prep draws the lanes of the picked zone. Of this device and this sitting, like all that the hand sets on the plan. */
export const useLanesOn = create<{ readonly on: boolean }>()(() => ({ on: false }));

export function showLanes(on: boolean): void {
  useLanesOn.setState({ on });
}
