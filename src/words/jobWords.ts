/** What the list of jobs, job files and saving say. */
export const jobText = {
  title: 'Jobs',
  lead: 'From a plan or a walk to machine field, edge strip, tight spots, hours, materials and price.',
  newJob: 'New job',
  newJobName: 'Name, if you like',
  start: 'Start',
  startAsLabel: 'Start as',
  startAs: { garage: 'Garage', warehouse: 'Warehouse', showroom: 'Showroom', kitchen: 'Kitchen', blank: 'Blank' },
  garageFloor: 'Garage floor',
  unnamed: (kind: string, day: string): string => `${kind} ${day}`,
  openFile: 'Open a file',
  yours: 'Your jobs',
  none: 'No job of yours in this browser yet.',
  examples: 'Invented examples',
  examplesMore: 'Made-up buildings, to look round in. What you change in them stays with you.',
  demos: {
    workshop: { name: 'Workshop', more: 'Scanned plan, columns, adhesive with a hold, a room no machine enters' },
    garage: { name: 'Two-car garage', more: 'Sketched from a tape, flake broadcast' },
  },
  removed: 'Removed, kept for thirty days',
  remove: 'Remove',
  rename: 'Rename',
  duplicate: 'Duplicate',
  takeBack: 'Take back',
  copyOf: (name: string): string => `${name}, copy`,
  removedSays: (name: string): string => `"${name}" removed. It is kept for thirty days.`,
  open: (name: string): string => `Open ${name}`,
  more: (name: string): string => `More for ${name}`,
  changed: (when: string): string => `Changed ${when}`,
  noFile: 'no copy on file',
  onFile: (fileName: string, when: string): string => `copy on file: ${fileName}, ${when}`,
  editsSince: (count: number): string => `${count} edits since`,
  asksForCopy: 'More than ten days of work are in this browser only. Open the job and save a file.',
  asksHere: 'More than ten days of work are in this browser only, and a browser may clear its store. Save a file.',
  crewCopy: 'crew copy',
  inMemory:
    'This browser keeps nothing for this page (a private window, or storage switched off). Save your job as a file before you close it.',
  notKept: 'The browser could not keep this job (is the disk full?). It is on this screen only: save it as a file.',
  fileKind: 'Slabtooth job',
  fileSaved: (fileName: string): string => `Saved as ${fileName}. The copy holds everything, page images too.`,
  savedLacking: (fileName: string): string =>
    `Saved as ${fileName}, but without a page image: it could not be read. Put it in again with Replace.`,
  pageLacking: (page: string): string =>
    `The picture of "${page}" is not in this browser. Put it in again with Replace, under Plan page.`,
  crewSaved: (fileName: string): string => `Crew copy saved as ${fileName}. There is no money in it.`,
  fileFailed: (why: string): string =>
    `The file was not written: ${why}. Nothing of the job is lost; try another folder.`,
  leaveTitle: 'Not all of this job is kept',
  leaveAnyway: 'Leave without the last edits',
  stay: 'Stay here',
  notOpened: (why: string): string => `That did not work (${why}). Nothing was changed; try again.`,
  demoFailed: 'The example could not be read. Check the connection and try again.',
  sameTitle: 'This job is here already',
  sameSays: (name: string): string =>
    `The file is a copy of "${name}". Open it beside that one, or put it in its place? What is replaced is kept for thirty days.`,
  beside: 'Open beside it',
  inPlace: 'Put in its place',
  keepMine: 'Open the one that is here',
  asideTitle: (count: number): string =>
    count === 1 ? 'One record could not be read' : `${count} records could not be read`,
  asideSays: 'They are kept as they came and go along when you save. They are not counted.',
  emptyTitle: 'No floor yet',
  emptySays: 'Is there a plan at hand, or do you sketch it here?',
  havePlan: 'Plan at hand',
  sketch: 'Sketch it here',
} as const;

export function loadFault(fault: string, what: string): string {
  const sentences: Readonly<Record<string, string>> = {
    notThere: 'This job is not in this browser. Open its file instead.',
    removed: `"${what}" was removed. Take it back in the list of jobs.`,
    notAJob: 'What is kept under this job is not a job. Open its file instead.',
    damagedJob: 'This job is damaged in this browser. Open its last file instead.',
    tooDeep: 'This job was not made by Slabtooth and cannot be opened.',
    migrationFailed: `This job could not be brought up to date (${what}). It was left as it is; open its last file.`,
  };
  return sentences[fault] ?? `This job could not be opened (${fault}).`;
}

export function saveFaultWords(
  fault: 'diskFull' | 'writeFailed' | 'takenOver' | 'noDatabase',
  waiting: number,
): string {
  const edits = waiting === 1 ? 'The last edit is' : waiting === 0 ? 'This job is' : `The last ${waiting} edits are`;
  const sentences = {
    diskFull: `Not saved: the disk is full. ${edits} on this screen only. Make room, or save the job as a file now.`,
    writeFailed: `Not saved: the browser could not write. ${edits} on this screen only. It is tried again; save the job as a file to be safe.`,
    takenOver:
      'Another tab has taken this job over. Save a file here if you need what is on this screen, then go on there.',
    noDatabase: `This browser keeps nothing. ${edits} on this screen only. Save the job as a file before you close it.`,
  };
  return sentences[fault];
}

export function jobFileFault(fault: string, fileName: string, what: string): string {
  const sentences: Readonly<Record<string, string>> = {
    notAZip: `"${fileName}" is not a Slabtooth file. Choose one that ends in .slabtooth.`,
    noJobJson: `"${fileName}" holds no job. Choose another file.`,
    brokenJson: `The job in "${fileName}" is damaged and cannot be read. Try an older copy.`,
    tooLarge: `"${fileName}" unpacks to more than a job can be (${what}). It was not opened.`,
    tooManyEntries: `"${fileName}" holds ${what} files, more than a job can. It was not opened.`,
    notAJob: `"${fileName}" is not a Slabtooth job. Choose another file.`,
    damagedJob: `The job in "${fileName}" has no records. Try an older copy.`,
    tooDeep: `"${fileName}" was not made by Slabtooth. It was not opened.`,
    migrationFailed: `"${fileName}" could not be brought up to date (${what}). It was not opened, and is as it was.`,
  };
  return sentences[fault] ?? `"${fileName}" could not be opened (${fault}).`;
}

export const placeFault = {
  openElsewhere: 'The job is open in another tab. Close it there first, or open the file beside it.',
  diskFull: 'The disk is full: the file was not taken over, and nothing was changed. Make room and open it again.',
  writeFailed: 'The browser could not write: the file was not taken over, and nothing was changed. Try again.',
  takenOver: 'Another tab was quicker. Look at the list of jobs and try again.',
  noDatabase: 'This browser keeps nothing. The file can be read, and saved again as a file.',
  crewCopyForWhole: 'A crew copy has no prices: it cannot take the place of the whole job. Open it beside that one.',
} as const;

export function jobFileReports(codes: readonly string[]): string | null {
  if (codes.length === 0) return null;
  const sentences: Readonly<Record<string, string>> = {
    imageHashMismatch: 'An image in the file is not the one that was saved. It is shown all the same.',
    imageUnreadable: 'An image in the file could not be read. Put the page in again.',
    imageMissing: 'A page image is not in the file. Put it in again with Replace.',
    strangeEntry: 'Something in the file is not ours and was left out.',
  };
  return [...new Set(codes)].map((code) => sentences[code] ?? code).join(' ');
}
