/** What the screens say of lanes: how a machine drives over its field, and what that says of the hours. */
function counted(count: number, one: string, several: string): string {
  return count === 1 ? `1 ${one}` : `${count.toLocaleString('en-US')} ${several}`;
}

export const lanesText = {
  title: 'Lanes',
  waiting: 'Working out the lanes.',
  none: 'No lanes: no machine works this zone, or a hold stands on it.',
  counts: (lanes: number, runs: number, turns: number, travel: string): string =>
    `${counted(lanes, 'lane', 'lanes')} in ${counted(runs, 'run', 'runs')}, ${counted(turns, 'turn', 'turns')}, ${travel} to drive.`,
  countsOf: (machine: string, counts: string): string => `${machine}: ${counts}`,
  numbers: 'Numbers on the plan are the order of the runs.',
  zoomIn: 'From here they lie too close together to be drawn: zoom in.',
  backs: (turns: number): string =>
    `${counted(turns, 'turn', 'turns')} where the turning circle does not fit: the machine backs out, and each counts twice.`,
  machineHours: 'Machine hours by lanes',
  rateSays: (rate: string): string => `the rate says ${rate}`,
  says: (lanes: string, rate: string, difference: string): string =>
    `Lanes say ${lanes}, the rate says ${rate}: ${difference}.`,
  more: (hours: string): string => `${hours} more`,
  less: (hours: string): string => `${hours} less`,
  same: 'the same',
  second: 'Second opinion, by lanes',
  why: 'The rate holds the turning of an ordinary open room, and factors for the size of the room and for what stands in it. By lanes the turns and moves of this floor stand in their place, and lanes are rounded up to whole ones. No price follows from it.',
  driving: 'Speed and overlap: no table gives the speed of the machine, it follows from the rate and the cut width.',
};
