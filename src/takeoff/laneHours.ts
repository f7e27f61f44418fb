import { onFloor, type Doc } from '../model/doc.ts';
import type { Region } from '../geometry/floorShape.ts';
import type { LaneJob, LanePlan } from '../geometry/lanes/lane.ts';
import { add, divide, multiply, number, subtract, term } from './formula.ts';
import { cuttingForbidden } from './holds.ts';
import type { Line, Term } from './line.ts';
import { concreteFactors, slowedFields, type SlowedField } from './machineHours.ts';
import { makeLine } from './makeLine.ts';
import type { Takeoff } from './port.ts';
import { prepOfFloor, type PlannedMachine, type PlannedPass, type ZoneId } from './prep.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import { rateBook } from './rates/rateBook.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, factorTerm, measured, rateTerm } from './terms.ts';
import { machineIn, methodIn, passKey } from './workedFields.ts';

/*
 * Machine hours a second time, by driving: what the area rate holds as an average is taken apart.
 *
 *   area rate    field / (rate x concrete x room size x obstructions)
 *   lanes        travel x useful width / (rate x concrete)
 *                + (turns - turns of an open room) x turn time + runs x move time
 *
 * No table gives the speed of a machine. It follows from its rate: in the open room that a rate speaks of, the floor
 * finished in an hour is useful width x travel, with one turn at the end of every lane. So the two differ by what this
 * floor has of turns, moves and lanes that are rounded up, and by nothing else. A second opinion: nothing is priced
 * from it.
 */

/** One machine in one pass of a zone, with what its lanes are worked out from. */
export interface LaneAsk {
  /** Key of the line of machine hours that the lanes are a second opinion on. */
  readonly hours: string;
  readonly zone: ZoneId;
  /** What the machine is called. */
  readonly machineName: string;
  readonly field: Region;
  readonly job: LaneJob;
}

interface LaneWork extends LaneAsk {
  readonly site: Site;
  readonly work: ZoneWork;
  readonly pass: PlannedPass;
  readonly machine: PlannedMachine;
  readonly slowed: SlowedField;
}

/** The lanes to be worked out for a zone, one a machine and pass, those of the first pass first. None while a hold stands. */
export function laneAsks(doc: Doc, takeoff: Takeoff, zone: ZoneId): readonly LaneAsk[] {
  return laneWorks(doc, takeoff, zone).map(({ hours, machineName, field, job }) => ({
    hours,
    zone,
    machineName,
    field,
    job,
  }));
}

/**
 * Hours of a pass by its lanes, h, as a line with its own working; null when the takeoff has no such pass. It stands
 * beside the line of machine hours and is in no sum.
 */
export function laneHours(doc: Doc, takeoff: Takeoff, ask: LaneAsk, plan: LanePlan): Line | null {
  const work = laneWorks(doc, takeoff, ask.zone).find(({ hours }) => hours === ask.hours);
  return work ? laneLine(work, plan) : null;
}

function laneWorks(doc: Doc, takeoff: Takeoff, zone: ZoneId): LaneWork[] {
  const measure = takeoff.measure.zones.find((each) => each.id === zone);
  const prep = prepOfFloor(doc, takeoff.floor).find((each) => each.zone === zone);
  if (!measure || !prep || takeoff.holds.some((hold) => hold.zone === zone)) return [];
  const work: ZoneWork = { measure, prep, held: null };
  const site: Site = {
    doc,
    floor: takeoff.floor,
    measure: takeoff.measure,
    zones: [work],
    book: rateBook(doc),
    holds: takeoff.holds,
    noCutting: cuttingForbidden(doc),
    quantities: new Map(),
  };
  const fields = slowedFields(site, work);
  return prep.passes.flatMap((pass, index) =>
    fields.flatMap((slowed): LaneWork[] => {
      const machine = slowed.follows ? slowed.machine : pass.machine;
      const rate = methodOf(methodIn(pass, slowed));
      if (!machine || !rate || isHandMethod(rate) || rate.rate.unit !== 'm2/h') return [];
      const parts = { site, work, pass, machine, slowed };
      return [
        {
          ...parts,
          hours: ['hours.machine', zone, passKey(pass, index, slowed)].join('|'),
          zone,
          machineName: machine.name,
          field: fieldRegion(work, slowed),
          job: laneJob(parts),
        },
      ];
    }),
  );
}

const NO_FLOOR: Region = [];

/**
 * What one machine of the zone works, as rings: the whole field where no machine follows. The same object every time:
 * lanes are remembered by it.
 */
function fieldRegion({ measure, prep }: ZoneWork, { machine, follows }: SlowedField): Region {
  if (prep.followers.length === 0) return measure.field;
  if (!measure.fields) return follows ? NO_FLOOR : measure.field;
  return measure.fields.find((field) => field.machine === machine?.id)?.region ?? NO_FLOOR;
}

type LaneParts = Pick<LaneWork, 'site' | 'work' | 'pass' | 'machine' | 'slowed'>;

function laneJob(parts: LaneParts): LaneJob {
  const { site, machine } = parts;
  const terms = driveTerms(parts);
  const likely = (name: string): number => terms.find((each) => each.name === name)?.value.likely ?? 1;
  const usefulWidthM = likely(CUT) * likely(USEFUL);
  const rateM2h = terms.filter(isRate).reduce((product, each) => product * each.value.likely, 1);
  const turnH = likely(TURN_TIME) / 60;
  const hoursAMetre = usefulWidthM / rateM2h - turnH / likely(OPEN_LANE);
  const [entrance] = onFloor(site.doc, 'entrance', site.floor);
  return {
    usefulWidthMm: usefulWidthM * 1000,
    speedMmPerS: 1000 / (hoursAMetre * 3600),
    turnS: turnH * 3600,
    moveS: likely(MOVE_TIME) * 60,
    // The field ends short of the faces by its lap; the circle may use that floor as well.
    turningRadiusMm: Math.max(0, machine.turningMm / 2 - machine.lapMm),
    ...(entrance ? { startAt: entrance.at } : {}),
  };
}

const TRAVEL = 'lanes, together';
const CUT = 'cut width';
const USEFUL = 'useful share of the cut';
const OPEN_LANE = 'lane of an open room';
const TURN_TIME = 'time of a turn';
const MOVE_TIME = 'time of a move';
const NOT_RATE: readonly string[] = [CUT, USEFUL, OPEN_LANE, TURN_TIME, MOVE_TIME];

function isRate({ name }: Term): boolean {
  return !NOT_RATE.includes(name);
}

/** The rate with its factors, and what driving takes. */
function driveTerms({ site, work, pass, machine, slowed }: LaneParts): Term[] {
  const method = methodIn(pass, slowed);
  const overlap = methodOf(method)?.group === 'shot' ? 'shot' : 'grinder';
  return [
    chosen(CUT, machine.cutWidthMm / 1000, 'm'),
    factorTerm(USEFUL, site.book.rate(`factors/overlap/${overlap}`)),
    rateTerm('rate', site.book.methodRate(method, machineIn(pass, slowed))),
    ...concreteFactors(site, work, method),
    factorTerm(OPEN_LANE, site.book.rate('factors/open_lane')),
    allowanceTerm(TURN_TIME, site.book.rate('labour/lane_turn')),
    allowanceTerm(MOVE_TIME, site.book.rate('labour/lane_move')),
  ];
}

function laneLine(work: LaneWork, plan: LanePlan): Line {
  const { pass, slowed, zone, hours } = work;
  const drive = driveTerms(work);
  const [, , ...of] = hours.split('|');
  const backs = plan.backingTurns > 0 ? [measured('turns again, where it backs out', plan.backingTurns, 'number')] : [];
  const over = term('times over');
  const driven = multiply(term(TRAVEL), term(CUT), term(USEFUL));
  const floor = slowed.slow.length === 0 ? driven : add(driven, ...slowed.slow.map((each) => each.extra));
  const turns = subtract(
    add(term('turns'), ...backs.map(({ name }) => term(name))),
    divide(term(TRAVEL), term(OPEN_LANE)),
  );
  const rate = multiply(...drive.filter(isRate).map(({ name }) => term(name)));
  return makeLine({
    code: 'hours.lanes',
    trade: 'hours',
    unit: 'h',
    zone,
    of: of.join('|'),
    records: [...(zone === 'rest' ? [] : [zone]), ...(pass.record ? [pass.record] : [])],
    formula: add(
      divide(multiply(floor, over), rate),
      divide(multiply(turns, term(TURN_TIME), over), number(60)),
      divide(multiply(term('runs of lanes'), term(MOVE_TIME), over), number(60)),
    ),
    terms: [
      measured(TRAVEL, plan.travelM, 'm'),
      ...drive,
      measured('turns', plan.turns, 'number'),
      ...backs,
      measured('runs of lanes', plan.runs, 'number'),
      chosen('times over', pass.times, 'number', pass.record),
      ...slowed.slow.flatMap((each) => each.terms),
    ],
  });
}
