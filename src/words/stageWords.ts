import type { Job } from '../model/records/job.ts';

/** What the screens after Survey say. One word for one thing: docs and paper use the same. */
export type QuestionSlot = 'builtBefore1981' | 'coatingOrTile' | 'inSlab' | 'gasAppliance';
export type AnswerCode = NonNullable<Job[QuestionSlot]>['answer'];

export const questionSlots: readonly QuestionSlot[] = ['builtBefore1981', 'coatingOrTile', 'inSlab', 'gasAppliance'];

export const questionWords: Readonly<
  Record<QuestionSlot, { readonly ask: string; readonly notes: Readonly<Record<AnswerCode | 'open', string>> }>
> = {
  builtBefore1981: {
    ask: 'Built 1980 or earlier?',
    notes: {
      open: 'Open: ask the owner, or look for the building permit.',
      yes: 'Yes: old tile, sheet, mastic or black adhesive counts as asbestos until a laboratory says otherwise.',
      no: 'No: in some countries asbestos was laid for longer, so local rules still decide. Paint is tested for lead before it is ground dry.',
      unknown: 'Open: counts as old until somebody finds out.',
    },
  },
  coatingOrTile: {
    ask: 'A coating or old tile on the floor?',
    notes: {
      open: 'Open: look at the floor, also under mats and along the walls.',
      yes: 'Yes: draw it as a finding in Survey, so that it is counted.',
      no: 'No: bare concrete.',
      unknown: 'Open: what is under a covering has to be seen first.',
    },
  },
  inSlab: {
    ask: 'Anything in the slab?',
    notes: {
      open: 'Open: tendons, heating, conduit. No crack is chased until it is answered.',
      yes: 'Yes: nothing is cut until it is located and marked.',
      no: 'No: cracks may be chased and joints sawn.',
      unknown: 'Open: no crack is chased until it is located.',
    },
  },
  gasAppliance: {
    ask: 'Gas appliance in the room?',
    notes: {
      open: 'Open: water heater, furnace, dryer, unit heater.',
      yes: 'Yes: off and covered before dust or solvent, by somebody licensed.',
      no: 'No: nothing burns in the room.',
      unknown: 'Open: dust and solvent vapour near a flame.',
    },
  },
};

export const answerWords: Readonly<Record<AnswerCode, string>> = { yes: 'Yes', no: 'No', unknown: "Don't know" };

/** Small counts in words, as they begin a sentence. */
function inWords(count: number): string {
  return ['No', 'One', 'Two', 'Three', 'Four'][count] ?? String(count);
}

export const questionsText = {
  title: 'Four questions before a price',
  intro: 'They are asked on site. "Don\'t know" counts as open.',
  answeredBy: (by: string | undefined, on: string): string => (by ? `${by}, ${on}` : on),
  who: 'Who answers',
  whoHelp: "Kept with each answer, with today's date.",
  notAnOffer: 'Not an offer',
  open: (count: number): string =>
    count === 1 ? 'One question is still open' : `${inWords(count)} questions are still open`,
  openHolds: (count: number): string => (count === 1 ? 'One hold stands' : `${inWords(count)} holds stand`),
  ready: 'All four questions are answered',
  sample: 'With sample wages and prices',
  setYours: 'Set yours',
  locate: 'What lies in the slab',
  locateHelp: 'Cutting may go on once it has been found and marked.',
};

export const resultText = {
  record: 'Record result',
  title: (what: string): string => `Result: ${what}`,
  result: 'Result',
  clear: 'Clear',
  found: 'Found',
  located: 'Located and marked',
  notLocated: 'Not located yet',
  on: 'Date',
  by: 'Name of the person',
  reference: 'Report or laboratory number',
  save: 'Put on the record',
  cancel: 'Leave it',
  needsResult: 'Choose the result first.',
  needsName: 'Type the name of the person who answers for the result.',
  needsDate: 'Type the date of the result, for example 2026-03-04.',
  foundKeeps: 'Found: the hold stays. Licensed people take it from here.',
  clears: 'Clear: the hold ends and the zone is priced again.',
  sampled: 'Only a laboratory or an accredited survey clears a hold, never a look.',
};

export const holdText = {
  asbestos: { title: 'Hold: suspect asbestos', test: 'Asbestos' },
  lead: { title: 'Hold: paint not tested for lead', test: 'Lead' },
  inSlab: { title: 'Hold: what lies in the slab', test: 'Located' },
  resultOf: (test: string, tag: string, term: string): string => `${test}, ${tag} ${term}`,
};

export const prepText = {
  zones: 'Zones',
  rest: 'Rest of the slab',
  makeRest: 'Make the rest a zone',
  drawZone: 'Draw a zone',
  drawing: 'Drawing a zone',
  drawingHelp: 'Press one corner after another, or drag a rectangle. Press the first corner again to end.',
  drawingDone: 'Zone ends here',
  drawingBack: 'One corner back',
  drawingLeave: 'Leave it',
  noZones: 'No zone yet',
  noZonesHelp: 'A zone is a part of the floor that gets one profile and one recipe. Draw one, or take the whole slab.',
  wholeSlab: 'Take the whole slab',
  orderTitle: 'Where zones overlap',
  orderHelp: 'The upper one wins. Nothing counts twice.',
  restLast: 'The rest of the slab is whatever no other zone covers.',
  moveUp: (name: string): string => `Put ${name} above`,
  moveDown: (name: string): string => `Put ${name} below`,
  up: 'Above',
  down: 'Below',
  pickZone: 'Pick a zone',
  pickZoneHelp: 'Its profile, machine and passes are set here.',
  held: 'Held',
  onThePlan: 'On the plan',
  legendReach: 'reach of the machine',
  legendHand: 'left for hand tools; thin strips are drawn wider',
  legendStop: 'stop line',
  legendJoint: 'joint',
  name: 'Name',
  laidTitle: 'What it is for',
  laid: 'What will be laid',
  bareProfile: 'A bare profile',
  thickness: 'Thickness of the system',
  cspFrom: 'CSP from',
  cspTo: 'to',
  noProfile: 'No profile asked for',
  place: 'Where',
  places: { indoor: 'Indoors', outdoor: 'Outdoors' },
  wet: 'Wet work',
  wets: { yes: 'Allowed', no: 'Not allowed' },
  hardness: 'Concrete',
  hardnesses: { soft: 'Soft', medium: 'Medium', hard: 'Hard', veryHard: 'Very hard' },
  time: 'Worked',
  times: { normal: 'Normal hours', occupied: 'Occupied', night: 'At night', extremeWeather: 'Heat or cold' },
  floorGets: 'What the floor gets',
  machine: 'Machine',
  byHand: 'By hand, no machine',
  standIn: 'Nobody has planned this zone yet: the first machine and two passes stand in.',
  otherMachine: 'Choose another machine',
  yoursNeeds: (width: string): string => `On your list, passes through ${width}`,
  machineSheet: 'Sizes and clearances',
  addMachine: 'Another machine',
  pass: (index: number): string => `Pass ${String(index)}`,
  abrasive: 'Abrasive',
  anyAbrasive: 'Not set',
  timesOver: 'Times over',
  addPass: 'Add a pass',
  removePass: (index: number): string => `Take pass ${String(index)} out`,
  remove: 'Take out',
  edgeTool: 'At the edge after it',
  edgeNone: 'Nothing at the edge',
  edgeAbrasive: 'Abrasive at the edge',
  edgeTimes: 'Edge passes',
  profileCheck: 'Profile',
  inField: 'In the field',
  atEdge: 'At the edge',
  toolGives: (tool: string, csp: string): string => `${tool} gives ${csp}.`,
  edgeMust:
    'Edges must reach the profile of the zone too: choose another edge tool, or agree on the difference in writing before work starts.',
  splits: 'How the zone splits',
  edgeStrip: (tool: string): string => `${tool}, edge strip`,
  tightSpot: (tool: string, tag: string): string => `${tool}, tight spot ${tag}`,
  cutOff: (tool: string): string => `${tool}, cut off`,
  rests: (tool: string): string => `${tool}, corners`,
  restsReason: 'What a round head leaves in corners.',
  handTool: 'By hand',
  handOnly: 'Hand work.',
  addsUp: 'Adds up to the net floor',
  reachesAllBut: (clearance: string): string => `Reaches all but ${clearance} at every face.`,
  reachesAll: 'Reaches all of it.',
  edgeRun: (metres: string): string => `${metres} of edge`,
  andStopLine: (edge: string, metres: string): string => `${edge} and ${metres} of stop line`,
  edgeMetres: (run: string): string => `${run}, corners included.`,
  edgeMetresStrip: (run: string, strip: string): string => `${run}, ${strip} wide with the lap.`,
  cannotEnter: (passage: string, clear: string, needs: string): string =>
    `Cannot enter: ${passage} is ${clear} clear, needs ${needs}.`,
  tooLow: (passage: string, clear: string, needs: string): string =>
    `Cannot enter: ${passage} is ${clear} high, needs ${needs}.`,
  theDoorway: 'The doorway',
  theWayIn: 'The way in',
  noWayIn: 'Cannot enter: no way in is wide enough.',
  worksRest: (clearance: string): string => `Works what is left, to ${clearance} from every face.`,
  worksAllRest: 'Works what is left.',
  nothingLeft: 'Gets to none of what is left.',
  edgeAfter: (run: string, strip: string, machine: string): string =>
    `${run}, ${strip} wide everywhere: clearance and lap of ${machine}, the last to work.`,
  followers: 'Machines, in this order',
  followersHelp: 'Bigger machines go first. Each does the same passes in what the ones before it leave.',
  addFollower: 'Let a machine follow',
  chooseFollower: 'Choose a smaller machine',
  noFollower: 'No smaller one here: add another',
  earlier: 'Earlier',
  later: 'Later',
  moveEarlier: (name: string): string => `Earlier: ${name}`,
  moveLater: (name: string): string => `Later: ${name}`,
  takeOut: (name: string): string => `Take out ${name}`,
  sizesOf: (name: string): string => `Sizes and clearances of ${name}`,
  shareOf: (area: string, share: string): string => `${area}, ${share} of the zone`,
  lessThan: (share: string): string => `less than ${share}`,
  legendReachOf: (machine: string): string => `reach of ${machine}`,
  legendNarrow: 'narrow place, press it to ask why',
  narrow: (a: string, b: string, clear: string, machine: string, needs: string): string =>
    `Between ${a} and ${b}: ${clear} clear, ${machine} needs ${needs}.`,
  narrowWalls: (clear: string, machine: string, needs: string): string =>
    `Between walls: ${clear} clear, ${machine} needs ${needs}.`,
  standing: (kind: string, tag: string): string => `${kind.toLowerCase()} ${tag}`,
  sides: { wall: 'the wall', obstruction: 'the obstruction', drop: 'the drop', stop: 'the stop line' },
  isClear: (clear: string): string => `${clear} clear`,
  isHigh: (clear: string): string => `${clear} high`,
  of: (name: string, what: string): string => `${name}, ${what}`,
  machineNeeds: (machine: string, needs: string): string => `${machine} needs ${needs}`,
  showOnPlan: 'Show on the plan',
  keptOff: (clearance: string, face: string): string =>
    `Kept back: the machine stays ${clearance} from the ${face.toLowerCase()}.`,
  gap: (needs: string): string => `Too narrow or too small for the head: it needs ${needs}.`,
  hoursAndPrice: 'Hours and price of the zone',
  price: 'Price',
  cautions: 'Cautions',
  waiting: 'Measuring',
};

export const machineText = {
  title: 'Machine',
  close: 'Done',
  name: 'Name',
  cutWidth: 'Cut width',
  bodyWidth: 'Body width',
  bodyLength: 'Body length',
  height: 'Height',
  turning: 'Turning circle',
  smallestOpening: 'Smallest opening',
  lap: 'Lap with hand work',
  clearances: 'Edge clearance: least distance of the head from a face',
  clearance: { wall: 'Wall', obstruction: 'Obstruction', drop: 'Drop', stop: 'Stop line' },
  needs: (width: string): string => `Passes an opening of ${width} or more.`,
  unsourced: 'Starting sizes are common practice, no source. Set yours from the plate on the machine.',
  add: 'Add this machine',
  pick: 'Kind of machine',
  needsKind: 'Choose the kind of machine.',
};
