import { fitTrue } from '../geometry/fitTrue.ts';
import type { FloorMeasure } from '../geometry/floorShape.ts';
import { floorTotals } from '../geometry/floorTotals.ts';
import { measureFloor } from '../geometry/measureFloor.ts';
import type { MeasureMemory } from '../geometry/measureMemory.ts';
import { onFloor, recordOf, type Doc, type Held } from '../model/doc.ts';
import { besidesLines } from './besidesLines.ts';
import { crackLines } from './crackLines.ts';
import { fault } from './checks/check.ts';
import { faultsOf } from './checks/checks.ts';
import { edgeLines } from './edgeLines.ts';
import { findingLines } from './findingLines.ts';
import { floorLines } from './floorLines.ts';
import { lapLines } from './lapLines.ts';
import { cuttingForbidden, holdsOf } from './holds.ts';
import type { Hold, HoldKind, Line } from './line.ts';
import { noticesOf, notAnOffer } from './offer.ts';
import { inPhases } from './phases.ts';
import { planShape } from './planShape.ts';
import type { Takeoff } from './port.ts';
import { prepOfFloor } from './prep.ts';
import { rateBook } from './rates/rateBook.ts';
import type { Site, ZoneWork } from './site.ts';
import { spotLines } from './spotLines.ts';
import { stepsLines } from './stepsLines.ts';
import { NOTHING_M2, totalsOf, type Totals } from './totals.ts';
import { upstandLines } from './upstandLines.ts';
import { workLines, type ToPrice } from './workLines.ts';

/**
 * Everything that one floor takes: quantities off the plan, and for what no hold forbids hours, material, dust and
 * price. Derived from the plan each time, never stored. With a memory of its own, whoever asks again and again waits
 * only for what changed. Never throws for what people draw; faults say what is wrong.
 */
export function takeoff(doc: Doc, floor: string, memory?: MeasureMemory): Takeoff {
  return floorTakeoff(doc, floor, memory).takeoff;
}

/** The takeoff of a floor with what its price is made from, which does not go over to the page. */
export interface FloorTakeoff {
  readonly takeoff: Takeoff;
  readonly toPrice: ToPrice | null;
}

/** The takeoff of a floor, as `takeoff` makes it, with what its price is made from: several floors are priced as one. */
export function floorTakeoff(doc: Doc, floor: string, memory?: MeasureMemory): FloorTakeoff {
  const blocked = whyBlocked(doc, floor);
  if (blocked) return { takeoff: emptyTakeoff(doc, floor, blocked), toPrice: null };
  const measuredSite = siteOf(doc, floor, memory);
  const quantities = quantityLines(measuredSite);
  const site: Site = { ...measuredSite, quantities: new Map(quantities.map((line) => [line.key, line])) };
  const work = workLines(site);
  const preps = site.zones.map((zone) => zone.prep);
  return {
    takeoff: {
      floor,
      measure: site.measure,
      lines: inPhases(doc, floor, preps, [...quantities, ...work.lines]),
      holds: site.holds,
      faults: faultsOf(site),
      notAnOffer: notAnOffer(doc, site.holds, work.missingPrices),
      missingPrices: work.missingPrices,
      notices: noticesOf(doc, site.book),
      blocked: null,
    },
    toPrice: work.toPrice,
  };
}

/**
 * The areas and lengths of one floor alone, for a hand that moves; null when it has no quantities. The same numbers as
 * those of `takeoff` of the same plan.
 */
export function takeoffTotals(doc: Doc, floor: string, memory?: MeasureMemory): Totals | null {
  return whyBlocked(doc, floor) ? null : totalsOf(floor, floorTotals(planShape(doc, floor), memory));
}

/** Why a floor has no quantities at all; null when it has. */
function whyBlocked(doc: Doc, floor: string): string | null {
  if (!recordOf(doc, 'floor', floor)) return 'noFloor';
  if (untruedPages(doc, floor).length > 0) return 'pageNotTrued';
  return onFloor(doc, 'slab', floor).length === 0 ? 'noSlab' : null;
}

/** Pages that are shown and whose dimensions give no scale, or that have none: what was traced on them has no size. */
function untruedPages(doc: Doc, floor: string): Held<'page'>[] {
  return onFloor(doc, 'page', floor).filter(
    (page) => page.hidden !== true && !fitTrue(page.dimensions, page.levelLine ?? null).ok,
  );
}

function emptyTakeoff(doc: Doc, floor: string, blocked: string): Takeoff {
  const faults = untruedPages(doc, floor).map((page) => fault(page.id, 'pageNotTrued'));
  const measure: FloorMeasure = {
    grossM2: 0,
    deductedM2: {},
    netM2: 0,
    perimeterM: 0,
    zones: [],
    faults: [],
  };
  return {
    floor,
    measure,
    lines: [],
    holds: [],
    faults,
    notAnOffer: [blocked],
    missingPrices: [],
    notices: [],
    blocked,
  };
}

function siteOf(doc: Doc, floor: string, memory: MeasureMemory | undefined): Site {
  const measure = measureFloor(planShape(doc, floor), memory);
  const holds = holdsOf(doc, floor, measure.zones);
  const preps = prepOfFloor(doc, floor);
  const zones = measure.zones.flatMap((zone): ZoneWork[] => {
    const prep = preps.find((each) => each.zone === zone.id);
    const there = zone.netM2 > NOTHING_M2;
    return prep && there ? [{ measure: zone, prep, held: zoneHold(holds, zone.id) }] : [];
  });
  return {
    doc,
    floor,
    measure,
    zones,
    book: rateBook(doc),
    holds,
    noCutting: cuttingForbidden(doc),
    quantities: new Map(),
  };
}

function zoneHold(holds: readonly Hold[], zone: string): HoldKind | null {
  return holds.find((hold) => hold.zone === zone)?.kind ?? null;
}

function quantityLines(site: Site): Line[] {
  return [
    ...floorLines(site),
    ...spotLines(site),
    ...edgeLines(site),
    ...upstandLines(site),
    ...stepsLines(site),
    ...crackLines(site),
    ...findingLines(site),
    ...besidesLines(site),
    ...lapLines(site),
  ];
}
