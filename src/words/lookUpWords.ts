function byHours([le4, gt4]: readonly [string, string]): string {
  return le4 === gt4 ? le4 : `${le4} to 4 h, ${gt4} over 4 h`;
}

/** Wording of the tables that are looked up: systems, limits, rules of counting. */
export const lookUpText = {
  names: {
    systems: 'Systems to be laid',
    profiles: 'Profiles (CSP)',
    methods: 'What a method can do',
    bodies: 'Bodies of machines',
    abrasives: 'Abrasives',
    shot: 'Shot sizes',
    findings: 'What is on a floor',
    cracks: 'Cracks, joints, spalls',
    readings: 'Readings and limits',
    tests: 'How many tests',
    checks: 'Checks before release',
    limits: 'Legal limits',
    silica: 'Silica, table 1',
    respirators: 'Respirators',
    noise: 'Noise by the hour',
    conductors: 'Conductors',
  },
  practice: 'common practice, no source',
  between: (low: number, high: number, unit: string): string =>
    low === high ? `${low} ${unit}` : `${low} to ${high} ${unit}`,
  csp: ([min, max]: readonly [number, number]): string => (min === max ? `CSP ${min}` : `CSP ${min} to ${max}`),
  peakValley: (range: string): string => `${range} from peak to valley: an estimate, the chip is the standard`,
  removal: (range: string): string => `takes off ${range} a pass`,
  edge: (range: string): string => `leaves ${range} at a face`,
  noise: (range: string): string => range,
  cannot: (what: string): string => `Cannot: ${what}`,
  body: (width: number, length: number, height: number): string => `${width} x ${length} x ${height} mm`,
  turnsOnSpot: 'Turns on the spot. The machine of a job has its own sizes, in Prep',
  turns: (mm: number): string => `Turning circle ${mm} mm. The machine of a job has its own sizes, in Prep`,
  inPractice: (range: string): string => `installers get ${range}: make a mock-up`,
  shotGives: (range: string): string => `Gives ${range} by practice`,
  release: (check: string): string => `Let go when: ${check}`,
  dwell: (minutes: number): string => `dwell ${minutes} min`,
  asbestos: {
    always: 'asbestos until tested',
    old: 'may hold asbestos in buildings of 1980 and earlier',
    no: null,
  },
  lead: 'no dry abrasion before a lead test',
  chase: (size: string): string => `chase ${size} mm`,
  wide: (mm: string): string => `${mm} mm wide`,
  kept: 'kept, without a limit',
  limit: {
    max: (limit: string, unit: string): string => `at most ${limit} ${unit}`,
    min: (limit: string, unit: string): string => `at least ${limit} ${unit}`,
    range: (limit: string, unit: string): string => `${limit} ${unit}`,
    equals: (limit: string): string => limit,
    record: (limit: string, unit: string): string => `${limit} ${unit}`,
  },
  factor: (apf: number): string => (apf === 0 ? 'none' : `APF ${apf}`),
  notAllowed: 'not in the table: paragraph (d) applies',
  silica: (indoors: readonly [string, string], outdoors: readonly [string, string]): string =>
    `Respirator indoors: ${byHours(indoors)}; outdoors: ${byHours(outdoors)}`,
  silicaNotes: {
    notListed: (tasks: string): string =>
      `Not in the table is not "nothing needed". Paragraph (d) applies to: ${tasks}`,
    ask: (tasks: string): string => `A competent person decides: ${tasks}`,
  },
  testNotes: (condition: number, wait: number, open: number, dome: string, sheet: number, glue: string): string =>
    `Room as in use for ${condition} h before. Probe: read ${wait} h after drilling. Dome: spot open ${open} h, dome ${dome} h. Plastic sheet: ${sheet} h at least. Pull-off: glue ${glue} h.`,
  testUnits: '1000 ft² are not 100 m²: a count is worked out in the units of the job.',
  controls: {
    water: 'water',
    water_at_impact: 'water at the point of impact',
    water_with_surfactant: 'water with surfactant',
    shroud_dust_collector: 'shroud and dust collector',
    dust_collector: 'dust collector',
  } as Readonly<Record<string, string>>,
  airflow: (cfm: number): string => `${cfm} cfm for each inch of the wheel`,
  betweenPasses: 'HEPA vacuum between passes indoors',
  apf: (factor: number): string => `Protection factor ${factor}`,
  hours: (hours: number): string => (hours === 1 ? '1 hour a day' : `${hours} hours a day`),
  resistance: (perKm: number, perKft: number): string => `${perKm} ohm/km (${perKft} ohm/kft)`,
};
