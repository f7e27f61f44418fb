import { onFloor, recordOf, type Held } from '../model/doc.ts';
import { isChased } from '../takeoff/crackClass.ts';
import { TOUCH_M2 } from '../takeoff/holds.ts';
import { findingRowOf } from '../takeoff/rates/findings.ts';
import { restOf } from '../takeoff/restOf.ts';
import { pathLength } from '../geometry/polyline.ts';
import { ringArea } from '../geometry/ring.ts';
import { paperWords } from '../words/paperWords.ts';
import { firm } from '../canvas/paint/textWidth.ts';
import { gapRow, keptWhole, tableRow, titleRow, type Row } from './paperRows.ts';
import { areaText, crackDoText, runText, widthText } from './zoneCardText.ts';
import { zoneNumberOf } from './zoneCards.ts';
import type { ZoneMapInput } from './zoneMapInput.ts';

const { head } = paperWords;

/** The columns that tables stand in, mm. */
export interface Place {
  readonly width: number;
  readonly columnMm: number;
}

const NO_HEAD: Row = { ...gapRow(0), keepWithNext: true };

/** A table in one piece; one that is higher than a column repeats its head where it goes on. */
function table({ columnMm }: Place, title: string, headRow: Row, rows: readonly Row[]): Row[] {
  if (rows.length === 0) return [];
  const [first, ...rest] = rows;
  return keptWhole(
    [
      gapRow(2.4),
      titleRow(title, 3.4),
      headRow,
      ...(first ? [first] : []),
      ...rest.map((row): Row => ({ ...row, head: headRow })),
    ],
    columnMm,
  );
}

/** The held zones that a crack, joint or finding lies in, as the map calls them: there nothing is done to it. */
function heldZones(input: ZoneMapInput, id: string): string {
  const held = input.takeoff.holds.flatMap(({ kind, zone }) =>
    kind === 'inSlab' || zone === null ? [] : [zone as string],
  );
  const tags = input.takeoff.measure.zones
    .filter((zone) => held.includes(zone.id) && ((zone.lengthM[id] ?? 0) > 0 || (zone.findingM2[id] ?? 0) > TOUCH_M2))
    .map(({ id: zone }) => {
      const record = zone === 'rest' ? restOf(input.doc, input.floor) : recordOf(input.doc, 'zone', zone);
      return firm((record ? paperWords.zone(zoneNumberOf(record)) : paperWords.rest).toLowerCase());
    });
  return tags.join(', ');
}

/** What is to be done about an item, with the box to tick; in a held zone only that it is held. */
function toDo(input: ZoneMapInput, id: string, what: string): { readonly what: string; readonly box: boolean } {
  const held = heldZones(input, id);
  return held === '' ? { what, box: true } : { what: paperWords.heldIn(held), box: false };
}

/** Metres of a line that lie on floor that is worked; the drawn length where nothing was measured. */
function lengthOf(input: ZoneMapInput, line: Held<'crack'> | Held<'joint'>): number {
  const zones = input.takeoff.measure.zones;
  if (zones.length === 0) return pathLength(line.path) / 1000;
  return zones.reduce((sum, zone) => sum + (zone.lengthM[line.id] ?? 0), 0);
}

function crackTable(input: ZoneMapInput, place: Place): Row[] {
  const { width } = place;
  const at = [0, 10, 27, 42] as const;
  const cells = (tag: string, length: string, wide: string, what: string): Parameters<typeof tableRow>[0] => [
    { at: at[0], text: tag, widthMm: 9 },
    { at: at[1], text: length, widthMm: 16 },
    { at: at[2], text: wide, widthMm: 14 },
    { at: at[3], text: what, widthMm: width - at[3] - 6 },
  ];
  const noCutting = input.takeoff.holds.some(({ kind }) => kind === 'inSlab');
  const rows = onFloor(input.doc, 'crack', input.floor).map((crack) => {
    const plain = crackDoText(crack, input.units);
    const { what, box } = toDo(input, crack.id, noCutting && isChased(crack) ? paperWords.afterLocating(plain) : plain);
    const wide = crack.widthMm === null ? paperWords.notMeasured : widthText(crack.widthMm, input.units);
    const length = runText(lengthOf(input, crack), input.units);
    return tableRow(cells(crack.tag, length, wide, what), width, { box });
  });
  return table(
    place,
    paperWords.cracks,
    tableRow(cells(head.crack, head.length, head.width, head.what), width, { head: true }),
    rows,
  );
}

function findingTable(input: ZoneMapInput, place: Place): Row[] {
  const { width } = place;
  const cells = (tag: string, area: string, what: string): Parameters<typeof tableRow>[0] => [
    { at: 0, text: tag, widthMm: 13 },
    { at: 14, text: area, widthMm: 17 },
    { at: 32, text: what, widthMm: width - 38 },
  ];
  const zones = input.takeoff.measure.zones;
  const rows = onFloor(input.doc, 'finding', input.floor).map((finding) => {
    const areaM2 =
      zones.length === 0
        ? ringArea(finding.ring) / 1e6
        : zones.reduce((sum, zone) => sum + (zone.findingM2[finding.id] ?? 0), 0);
    const row = findingRowOf(finding.kind);
    const { what, box } = toDo(input, finding.id, row?.treatment ?? '');
    const words = [row?.term ?? finding.kind, what].filter(Boolean).join(': ');
    return tableRow(cells(finding.tag, areaText(areaM2, input.units), words), width, { box });
  });
  return table(
    place,
    paperWords.findings,
    tableRow(cells(head.finding, head.area, head.what), width, { head: true }),
    rows,
  );
}

function jointTable(input: ZoneMapInput, place: Place): Row[] {
  const { width } = place;
  const cells = (tag: string, length: string, what: string): Parameters<typeof tableRow>[0] => [
    { at: 0, text: tag, widthMm: 13 },
    { at: 14, text: length, widthMm: 17 },
    { at: 32, text: what, widthMm: width - 38 },
  ];
  const rows = onFloor(input.doc, 'joint', input.floor).map((joint) => {
    const plain = joint.kind === 'isolation' ? paperWords.jointDo.isolation : paperWords.jointDo[joint.treat];
    const { what, box } = toDo(input, joint.id, plain);
    const words = `${paperWords.jointKinds[joint.kind]}: ${what}`;
    return tableRow(cells(joint.tag, runText(lengthOf(input, joint), input.units), words), width, { box });
  });
  return table(
    place,
    paperWords.joints,
    tableRow(cells(head.joint, head.length, head.what), width, { head: true }),
    rows,
  );
}

/** Obstructions alike in one row: B1, B2, B3 column. */
function thingRows(input: ZoneMapInput, place: Place): Row[] {
  const { width } = place;
  const groups = new Map<string, string[]>();
  for (const item of onFloor(input.doc, 'obstruction', input.floor)) {
    const what = [item.name ?? paperWords.thingKinds[item.kind], paperWords.under[item.under]]
      .filter(Boolean)
      .join(', ');
    groups.set(what, [...(groups.get(what) ?? []), item.tag]);
  }
  const rows = [...groups].map(([what, tags]) =>
    tableRow(
      [
        {
          at: 0,
          text: tags.toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })).join(', '),
          widthMm: width * 0.55,
        },
        { at: width * 0.58, text: what, widthMm: width * 0.42 },
      ],
      width,
    ),
  );
  return table(place, paperWords.things, NO_HEAD, rows);
}

function saidRow(tag: string, text: string, { width }: Place): Row {
  return tableRow(
    [
      { at: 0, text: tag, widthMm: 13 },
      { at: 14, text, widthMm: width - 14 },
    ],
    width,
  );
}

/** Power and water as they are, and what somebody wrote on the plan. */
function siteRows(input: ZoneMapInput, place: Place): Row[] {
  const services = onFloor(input.doc, 'service', input.floor).map(({ tag, kind, volts, amps, phases }) =>
    saidRow(tag, paperWords.service(kind, volts, amps, phases), place),
  );
  const notes = onFloor(input.doc, 'note', input.floor).map(({ tag, text }) => saidRow(tag, text, place));
  return [...table(place, paperWords.services, NO_HEAD, services), ...table(place, paperWords.notes, NO_HEAD, notes)];
}

/** Cracks, findings, joints, obstructions, services and notes, each by its tag on the map. */
export function tableRows(input: ZoneMapInput, place: Place): Row[] {
  return [
    ...crackTable(input, place),
    ...findingTable(input, place),
    ...jointTable(input, place),
    ...thingRows(input, place),
    ...siteRows(input, place),
  ];
}
