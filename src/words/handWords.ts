/** What the hand does, in words: undo labels, why something was refused, why a point snapped, what to do next. */

/** Undo steps, by command. */
export const commandLabels: Readonly<Record<string, string>> = {
  addCorner: 'Add a corner',
  addFollower: 'Let a machine follow',
  addMachine: 'Add a machine',
  addOpening: 'Add an opening',
  addPhase: 'Add a phase',
  answerQuestion: 'Answer a question',
  drawCrack: 'Draw a crack',
  drawDimension: 'Draw a dimension',
  drawFinding: 'Draw a finding',
  drawJoint: 'Draw a joint',
  drawOutOfScope: 'Draw an area out of scope',
  drawSlab: 'Draw a slab',
  drawSteps: 'Draw steps',
  drawWall: 'Draw a wall',
  drawZone: 'Draw a zone',
  issueEstimate: 'Issue an estimate',
  moveCorner: 'Move a corner',
  moveEdge: 'Move an edge',
  moveFollower: 'Change the order of machines',
  moveRecords: 'Move',
  newFloor: 'Add a floor',
  placeEntrance: 'Place a machine entrance',
  placeNote: 'Place a note',
  placeObstruction: 'Place an obstruction',
  placePage: 'Place a plan page',
  placeReading: 'Place a reading',
  recordClearance: 'Record a result',
  recordTick: 'Tick off',
  removeCorner: 'Take a corner out',
  removeFollower: 'Take a machine out of the recipe',
  removeRecords: 'Remove',
  reorder: 'Change the order',
  replacePage: 'Replace the plan page',
  restore: 'Bring back',
  setEdge: 'Change edges',
  setEdgeLength: 'Set the length of an edge',
  setField: 'Change an item',
  setFields: 'Change items',
  setRateRow: 'Change a rate or price',
  setRateRows: 'Change rates',
  setRecipe: 'Set the recipe',
  setUpstand: 'Set an upstand',
  startJob: 'Start the job',
  truePage: 'True the page',
};

/** What is wrong, and what to do. Each refusal has left the plan as it was. */
const refusals: Readonly<Record<string, string>> = {
  badValue: 'This value does not fit here, so nothing was changed. Check the number and its unit.',
  clearanceIncomplete: 'A result needs a date and the name of the person who found it. Fill in both.',
  cornersFixed: 'The corners of this item follow from its sizes. Change the sizes instead.',
  crossesItself: 'The outline would cross itself. Put the corners in order, going round once.',
  dimensionsDisagree: 'The dimensions do not fit together. Check the lengths, or take the wrong one out.',
  doorwayWhole: 'A doorway stays in one piece. Add the corner in the wall beside it.',
  edgeIsNoWall: 'An opening goes into a wall edge, and this edge is open already. Pick a wall edge.',
  edgeNeeded: 'Tap nearer to an edge of the slab.',
  followerBigger:
    'Bigger machines go first: one that follows may not be wider than the one before it. Choose a smaller one, or take the wider one out.',
  followerTwice: 'This machine works here already. Choose another one to follow.',
  idTaken: 'This was drawn already. Nothing was added twice.',
  issuedStays: 'An issued estimate stays as it is. Change the job and issue a new one.',
  jobStarted: 'This job has been started. Make a new job instead.',
  jobStays: 'The job itself cannot be removed here. Remove it in the list of jobs.',
  lastFloor: 'A job keeps at least one floor. Add another floor first.',
  locked: 'This item is locked. Unlock it first.',
  machineInUse: 'A recipe still uses this machine. Choose another machine there first.',
  nameMissing: 'Give it a name first.',
  noArea: 'These corners enclose no area. Put at least one corner off the line.',
  noChange: 'It is like this already.',
  noSize: 'Give a size greater than zero.',
  notAnOffer:
    'This is not an offer yet. Answer the four questions, clear the holds and set the missing prices, then issue it.',
  nothingToIssue: 'There is no price to issue yet. Draw the slab and give its zones a recipe first.',
  notANumber: 'A corner has no place. Draw it again.',
  nothingBeyond: 'Beyond a wall or a drop there is no floor. Make the edge open or a doorway first.',
  openingNeedsWall: 'An opening goes into a wall or a slab edge. Tap on one.',
  openingOverCorner: 'An opening would lie over a corner of its wall. Move or narrow the opening first.',
  openingPastWall: 'An opening would stand past the end of its wall. Move or narrow the opening first.',
  openingTooLong: 'The opening is wider than the wall has room for here. Move it, or type a smaller width.',
  openingsOverlap: 'Two openings would overlap. Move it along the wall, or type a smaller width.',
  passTimes: 'A pass goes over the floor at least once. Type 1 or more.',
  pageNotTrued: 'The page needs at least one known length. Pick its two ends and type it.',
  pageNeeded: 'Choose the plan page to true first.',
  pathNotStarted: 'Set a point first, then type the length of the next line.',
  pickOffPage: 'This point is not on the plan page. Pick both ends on the page.',
  pickTwoEnds: 'Pick both ends of a known length on the page first, then type the length.',
  picksTooNear: 'The two ends are too near to each other. Pick a longer length, as long as the page shows.',
  restTaken: 'This floor has a zone for the rest of the slab already. Change that one.',
  slotFixed: 'This cannot be changed: numbers such as C7 are given once.',
  tooFewCorners: 'Too few corners: an area needs three, a line needs two.',
  unknownCommand: 'Nothing was done: this step is not known here.',
  unknownCorner: 'This corner is no longer there. Pick the item again.',
  unknownEdge: 'This edge is no longer there. Pick the item again.',
  unknownFloor: 'This floor is no longer there. Choose a floor first.',
  unknownMachine: 'This machine is no longer there. Choose another one.',
  unknownQuestion: 'This question is not known here.',
  unknownRecord: 'This item is no longer there. Pick another one.',
  upstandNeedsEdge: 'An upstand rises along a slab edge or round an obstruction. Tap on one.',
  rateOrder: 'Nothing was changed: low, likely and high of a rate have to rise in that order.',
  wrongKind: 'Nothing was done: this is another kind of item.',
  zeroLength: 'Two corners lie on the same spot. Move them apart, or take one out.',
};

export function refusalSentence(code: string): string {
  return refusals[code] ?? `Nothing was changed (${code}).`;
}

/** Every code that has a sentence. */
export const refusalCodes: readonly string[] = Object.keys(refusals);

/** What to do next, by the code a tool gives; a refusal in its place says why this would not go. */
const hints: Readonly<Record<string, string>> = {
  boxInside: 'Let go to pick what lies wholly inside.',
  boxTouching: 'Let go to pick what lies inside or is touched.',
  carrying: 'Let go to set it down. Esc puts it back.',
  crackStart: 'Tap where the crack begins.',
  dimensionStart: 'Tap one end of the length to show.',
  edgeKindStart: 'Choose a kind, then tap the edges that are of it.',
  entranceStart: 'Tap where machines come onto the floor.',
  findingStart: 'Tap round it, or drag a rectangle over it.',
  jointStart: 'Tap where the joint begins.',
  levelEnd: 'Pick the other end of the line.',
  levelStart: 'Pick one end of a line that should run straight across or straight up.',
  noteStart: 'Tap where the note belongs.',
  obstructionStart: 'Tap its middle, or drag a rectangle.',
  openingSet: 'Tap to set the opening here.',
  openingStart: 'Tap on a wall or on an edge of the slab.',
  outOfScopeStart: 'Tap round what is not part of the job, or drag a rectangle.',
  pathClose: 'Next corner, or tap the first one to close.',
  pathCorner: 'Next corner. Type length and turn for an exact one.',
  pathFinish: 'Next point, or Done.',
  pathNext: 'Next point. Type length and turn for an exact one.',
  pickHeld: 'Drag it, a corner number or an edge. Tap an edge twice for a corner more.',
  pickStart: 'Tap an item, or drag a box round several.',
  readingStart: 'Tap where you measured.',
  rectangleEnd: 'Let go at the opposite corner.',
  crossesHere: 'It crosses itself in the ring: take corners back as far as there.',
  slabStart: 'Tap the first corner of the slab, or drag a rectangle.',
  stepsStart: 'Tap round the steps, or drag a rectangle.',
  trueEnd: 'Pick the other end of this length.',
  trueLength: 'Type the length between the two ends.',
  trueStart: 'Pick one end of a length that you know.',
  upstandStart: 'Tap the edges or obstructions that rise from the floor.',
  wallStart: 'Tap where the wall begins.',
  zoneStart: 'Tap round the zone, or drag a rectangle.',
};

export function hintSentence(code: string): string {
  return hints[code] ?? refusals[code] ?? '';
}

export const hintCodes: readonly string[] = Object.keys(hints);

/** The word beside the chalk tick: what the point has met. Nothing where it is free. */
export const snapWords: Readonly<Record<string, string>> = {
  corner: 'corner',
  crossing: 'crossing',
  middle: 'middle',
  square: 'square to wall',
  parallel: 'parallel',
  extension: 'in line',
  edge: 'on edge',
  axis: 'straight',
  pageLine: 'line on page',
  grid: 'grid',
  free: '',
};

/** A right angle to the line being drawn has no wall to name. */
export function snapWord({ kind, on }: { readonly kind: string; readonly on: string | null }): string {
  return kind === 'square' && on === null ? 'square' : (snapWords[kind] ?? '');
}
