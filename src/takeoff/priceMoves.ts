import { evaluate, fixed } from './formula.ts';
import type { Line, Range, Term } from './line.ts';

/** One number that is not certain, and what the likely price becomes when it alone is at its low or high. */
export interface PriceMove {
  readonly key: string;
  readonly term: Term;
  /** Lines that take the number themselves, in the order of the takeoff. */
  readonly lines: readonly Line[];
  /** The price with this number alone at its low or its high, all else likely; in minor units. */
  readonly low: number;
  readonly high: number;
}

export interface PriceMoves {
  /** The price with all at likely, minor units. */
  readonly likely: number;
  /** The number that moves it furthest first. What does not move it is left out. */
  readonly moves: readonly PriceMove[];
}

/**
 * What moves the price most: every number with a range in turn at its low and at its high, all others likely, and the
 * price worked out again through the formulas of all lines between. A number that several lines take moves in all of
 * them. The moves do not add up to the range of the price, in which everything is low or high at once.
 * Null where there is no price.
 */
export function priceMoves(lines: readonly Line[]): PriceMoves | null {
  const price = lines.find(({ code }) => code === 'money.price');
  if (!price) return null;
  const graph = graphBelow(price, lines);
  const likely = priced(price, graph, null);
  const moves = uncertain(graph)
    .map((source): PriceMove => {
      const at = (value: number): number => priced(price, graph, { ...source, value });
      return { ...source, low: at(source.term.value.low), high: at(source.term.value.high) };
    })
    .filter(({ low, high }) => low !== likely || high !== likely)
    .toSorted((a, b) => swing(b, likely) - swing(a, likely));
  return { likely, moves };
}

function swing({ low, high }: PriceMove, likely: number): number {
  return Math.max(low, high, likely) - Math.min(low, high, likely);
}

/** A line with what it takes from other lines, and where its own numbers come from. */
interface Node {
  readonly line: Line;
  readonly terms: readonly { readonly term: Term; readonly of: Node | null; readonly key: string }[];
}

type Graph = ReadonlyMap<string, Node>;

/** The line and every line that its number follows from. */
function graphBelow(top: Line, lines: readonly Line[]): Graph {
  const byKey = new Map(lines.map((line) => [line.key, line]));
  const graph = new Map<string, Node>();
  const add = (line: Line): Node => {
    const known = graph.get(line.key);
    if (known) return known;
    const terms = line.working.terms.map((term) => {
      const from = byKey.get(term.from ?? '');
      const isLine = from !== undefined && same(from.quantity, term.value);
      return { term, of: isLine ? add(from) : null, key: keyOf(term, line) };
    });
    const node = { line, terms };
    graph.set(line.key, node);
    return node;
  };
  add(top);
  return graph;
}

function same(a: Range, b: Range): boolean {
  return a.low === b.low && a.likely === b.likely && a.high === b.high;
}

/** A rate of the job by its record; one straight from the book by what it says in the lines of one code. */
function keyOf({ name, from, unit, value: { low, likely, high } }: Term, { code }: Line): string {
  return from ?? [code, name, unit, low, likely, high].join('|');
}

function uncertain(graph: Graph): readonly Pick<PriceMove, 'key' | 'term' | 'lines'>[] {
  const found = new Map<string, { key: string; term: Term; lines: Line[] }>();
  for (const { line, terms } of graph.values()) {
    for (const { term, of, key } of terms) {
      if (of !== null || term.value.low === term.value.high) continue;
      const source = found.get(key);
      if (source) source.lines.push(line);
      else found.set(key, { key, term, lines: [line] });
    }
  }
  return [...found.values()];
}

/** One number that is not what is likely. */
interface Moved {
  readonly key: string;
  readonly term: Term;
  readonly value: number;
}

/**
 * The top line with one number moved, all else likely. What does not follow from that number is what it was: most lines
 * need not be worked out again.
 */
function priced(top: Line, graph: Graph, moved: Moved | null): number {
  const following = moved === null ? null : followers(graph, moved.key);
  const known = new Map<string, number>();
  const valueOf = (node: Node): number => {
    if (following?.has(node.line.key) === false) return node.line.quantity.likely;
    const before = known.get(node.line.key);
    if (before !== undefined) return before;
    const terms = node.terms.map(({ term, of, key }): Term => {
      const own = moved?.key === key && isSame(term, moved.term) ? moved.value : term.value.likely;
      return { ...term, value: fixed(of ? valueOf(of) : own) };
    });
    const { likely } = evaluate(node.line.working.formula, terms);
    known.set(node.line.key, likely);
    return likely;
  };
  const node = graph.get(top.key);
  return node ? valueOf(node) : top.quantity.likely;
}

/** Also where a line holds it still, lest one loss is counted twice in its range: moved alone it moves there too. */
function isSame(a: Term, b: Term): boolean {
  return a.unit === b.unit && a.value.likely === b.value.likely;
}

/** Keys of the lines that take a number, and of all that follow from them. */
function followers(graph: Graph, moved: string): ReadonlySet<string> {
  const found = new Set<string>();
  // A line stands behind those it follows from: one walk finds all that come after.
  for (const { line, terms } of graph.values()) {
    if (terms.some(({ of, key }) => (of === null ? key === moved : found.has(of.line.key)))) found.add(line.key);
  }
  return found;
}
