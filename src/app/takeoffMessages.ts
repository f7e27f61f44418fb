import type { Cell } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import type { Line } from '../takeoff/line.ts';
import type { Answer, Answered } from '../takeoff/port.ts';
import { loadOf, outlinesOf, packZone, unpackOutlines, type Outlines, type ZoneParcel } from './takeoffParcel.ts';

/** What the page says to the takeoff worker. Asks are counted by both: each of these is one. */
export type ToWorker =
  | { readonly kind: 'load'; readonly doc: Doc; readonly floor: string; readonly tick: number }
  | { readonly kind: 'change'; readonly cells: readonly Cell[]; readonly tick: number }
  | { readonly kind: 'preview'; readonly cells: readonly Cell[] | null; readonly tick: number };

/**
 * What it says back. An answer of a large floor would hold up the page for long: it comes in pieces, each a message and
 * a moment of its own, and is whole when its `answer` has come.
 */
export type FromWorker =
  | { readonly kind: 'totals'; readonly totals: Answered }
  | { readonly kind: 'zone'; readonly zone: ZoneParcel }
  | { readonly kind: 'lines'; readonly lines: readonly Line[] }
  | { readonly kind: 'answer'; readonly answer: Answer };

/** Of so many terms at most is one message with lines. */
const MOST_TERMS = 1500;

/** The worker's end: an answer into messages. It knows which outlines the page has already. */
export function answerSender(post: (message: FromWorker, load: ArrayBuffer[]) => void): (answer: Answer) => void {
  let sent = new Map<string, Outlines>();
  return (answer) => {
    const { measure, lines } = answer.takeoff;
    for (const zone of measure.zones) {
      const parcel = packZone(zone, sent.get(zone.id));
      post({ kind: 'zone', zone: parcel }, loadOf(parcel));
    }
    sent = new Map(measure.zones.map((zone) => [zone.id, outlinesOf(zone)]));
    for (const some of inLots(lines)) post({ kind: 'lines', lines: some }, []);
    const rest = { ...answer.takeoff, measure: { ...measure, zones: [] }, lines: [] };
    post({ kind: 'answer', answer: { ...answer, takeoff: rest } }, []);
  };
}

function inLots(lines: readonly Line[]): Line[][] {
  const lots: Line[][] = [];
  let terms = MOST_TERMS;
  for (const line of lines) {
    if (terms >= MOST_TERMS) {
      lots.push([]);
      terms = 0;
    }
    lots.at(-1)?.push(line);
    terms += 1 + line.working.terms.length;
  }
  return lots;
}

/** The page's end: messages into answers. Null while an answer is not whole. */
export function answerReader(): (message: Exclude<FromWorker, { kind: 'totals' }>) => Answer | null {
  let had = new Map<string, Outlines>();
  let zones: Answer['takeoff']['measure']['zones'][number][] = [];
  let lines: Line[] = [];
  return (message) => {
    switch (message.kind) {
      case 'zone': {
        const { numbers, outlines } = message.zone;
        const drawn = outlines ? unpackOutlines(outlines) : had.get(numbers.id);
        if (drawn) zones.push({ ...numbers, ...drawn });
        return null;
      }
      case 'lines':
        lines.push(...message.lines);
        return null;
      case 'answer': {
        const { takeoff } = message.answer;
        const whole = { ...message.answer, takeoff: { ...takeoff, lines, measure: { ...takeoff.measure, zones } } };
        had = new Map(zones.map((zone) => [zone.id, outlinesOf(zone)]));
        zones = [];
        lines = [];
        return whole;
      }
    }
  };
}
