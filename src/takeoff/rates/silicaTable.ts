import type { Sourced } from './rateRow.ts';

/** Protection factor of the respirator; 0: none by the table; null: this control is not allowed there, (d) applies. */
interface ByHours {
  /** Four hours or less of all Table 1 tasks of the worker in the shift. */
  readonly le4: number | null;
  readonly gt4: number | null;
}

export interface SilicaControl {
  readonly control: string;
  /** Airflow, cubic feet a minute for each inch of the wheel; handheld grinders only. */
  readonly cfmPerInch?: number;
  readonly airflow?: 'asTheMakerSays';
  readonly filterPct?: number;
  readonly filterCleaning?: 'needed' | 'or a cyclone';
  readonly vacuumBetweenPassesIndoors?: true;
  readonly vacuumWhenCleaningHoles?: true;
  readonly outdoor: ByHours;
  readonly indoor: ByHours;
}

export interface SilicaTask {
  readonly entry: string;
  readonly task: string;
  readonly controls: readonly SilicaControl[];
}

/** The table; the eleven of its eighteen entries that floor work meets. */
export const SILICA_FROM: Sourced = { source: 'CFR1926.1153', provenance: 'R', fromMemory: false };

/** 29 CFR 1926.1153(c) table 1. Not listed never reads as nothing needed: then paragraph (d) applies. */
export const silicaTasks: readonly SilicaTask[] = [
  {
    entry: 'i',
    task: 'Stationary (stand-mounted) masonry saws',
    controls: [{ control: 'water', outdoor: { le4: 0, gt4: 0 }, indoor: { le4: 0, gt4: 0 } }],
  },
  {
    entry: 'ii',
    task: 'Handheld power saws, any blade',
    controls: [{ control: 'water', outdoor: { le4: 0, gt4: 10 }, indoor: { le4: 10, gt4: 10 } }],
  },
  {
    entry: 'iv',
    task: 'Walk-behind saws',
    controls: [{ control: 'water', outdoor: { le4: 0, gt4: 0 }, indoor: { le4: 10, gt4: 10 } }],
  },
  {
    entry: 'v',
    task: 'Drivable saws',
    controls: [{ control: 'water', outdoor: { le4: 0, gt4: 0 }, indoor: { le4: null, gt4: null } }],
  },
  {
    entry: 'vi',
    task: 'Rig-mounted core saws or drills',
    controls: [{ control: 'water', outdoor: { le4: 0, gt4: 0 }, indoor: { le4: 0, gt4: 0 } }],
  },
  {
    entry: 'vii',
    task: 'Handheld and stand-mounted drills',
    controls: [
      {
        control: 'shroud_dust_collector',
        vacuumWhenCleaningHoles: true,
        filterPct: 99,
        filterCleaning: 'needed',
        airflow: 'asTheMakerSays',
        outdoor: { le4: 0, gt4: 0 },
        indoor: { le4: 0, gt4: 0 },
      },
    ],
  },
  {
    entry: 'x',
    task: 'Jackhammers and handheld powered chipping tools',
    controls: [
      { control: 'water_at_impact', outdoor: { le4: 0, gt4: 10 }, indoor: { le4: 10, gt4: 10 } },
      {
        control: 'shroud_dust_collector',
        filterPct: 99,
        filterCleaning: 'needed',
        airflow: 'asTheMakerSays',
        outdoor: { le4: 0, gt4: 10 },
        indoor: { le4: 10, gt4: 10 },
      },
    ],
  },
  {
    entry: 'xi',
    task: 'Handheld grinders for mortar removal',
    controls: [
      {
        control: 'shroud_dust_collector',
        cfmPerInch: 25,
        filterPct: 99,
        filterCleaning: 'or a cyclone',
        outdoor: { le4: 10, gt4: 25 },
        indoor: { le4: 10, gt4: 25 },
      },
    ],
  },
  {
    entry: 'xii',
    task: 'Handheld grinders for uses other than mortar removal',
    controls: [
      { control: 'water', outdoor: { le4: 0, gt4: 0 }, indoor: { le4: null, gt4: null } },
      {
        control: 'shroud_dust_collector',
        cfmPerInch: 25,
        filterPct: 99,
        filterCleaning: 'or a cyclone',
        outdoor: { le4: 0, gt4: 0 },
        indoor: { le4: 0, gt4: 10 },
      },
    ],
  },
  {
    entry: 'xiii',
    task: 'Walk-behind milling machines and floor grinders',
    controls: [
      { control: 'water', outdoor: { le4: 0, gt4: 0 }, indoor: { le4: 0, gt4: 0 } },
      {
        control: 'dust_collector',
        vacuumBetweenPassesIndoors: true,
        filterPct: 99,
        filterCleaning: 'needed',
        airflow: 'asTheMakerSays',
        outdoor: { le4: 0, gt4: 0 },
        indoor: { le4: 0, gt4: 0 },
      },
    ],
  },
  {
    entry: 'xiv',
    task: 'Small drivable milling machines, less than half lane',
    controls: [{ control: 'water_with_surfactant', outdoor: { le4: 0, gt4: 0 }, indoor: { le4: 0, gt4: 0 } }],
  },
];

/** How the hours count. */
export const SILICA_SHIFT =
  '(c)(3): the hours of all Table 1 tasks of one worker in the shift are added up. Over 4 h together, every one of these tasks is read as over 4 h.';
/** Where they are split. */
export const SILICA_BOUNDARY =
  'The heads of the columns say 4 hours or less and more than 4; (c)(3) says less than four for the lower one. Exactly 4 h is read here by the heads of the columns: ask.';
/** Work of a floor that the table does not list. */
export const SILICA_NOT_LISTED: readonly string[] = [
  'shot blasting and abrasive blasting (paragraph (d); abrasive blasting also 1926.57)',
  'scraping',
  'buffing',
  'sweeping (see (f))',
  'asbestos and lead work have their own sections',
];
/** Readings of the table that a competent person decides. */
export const SILICA_ASK: readonly string[] = [
  'ride-on grinder: read as floor grinder (xiii)',
  'floor scabbler: xiii or x',
  'crack chase with a grinder and a cutting blade: xii or ii',
  'bush-hammer heads on a floor grinder: xiii',
  'needle scaler, hand scabbler: x',
];
/** What holds for every entry. */
export const SILICA_ALWAYS: readonly string[] = [
  '(c)(2)(i) indoors or enclosed: means of exhaust so that visible dust does not build up',
  '(c)(2)(ii) wet methods: flow enough to minimise visible dust',
  '(f) no dry sweeping or brushing where wet sweeping or HEPA vacuuming is feasible; no compressed air without capture',
  '(g) written exposure control plan and competent person',
  '(h) medical surveillance if a respirator is required 30 or more days a year',
];
