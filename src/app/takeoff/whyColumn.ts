import type { Formula, Range, Term } from '../../takeoff/line.ts';

export type Sign = 'plus' | 'less' | 'times' | 'over' | 'most';

/** A line of the Why column: a number that went in, or a sum of its own that went in. */
export interface WhyPart {
  readonly sign: Sign;
  /** The term by name, or null for a plain number or a sum of its own. */
  readonly term: Term | null;
  readonly value: Range;
  /** What the sum of its own is made of; empty for a term or a number. */
  readonly parts: readonly WhyPart[];
  readonly roundedUp: boolean;
}

type Evaluate = (formula: Formula) => Range;

function flip(sign: Sign): Sign {
  if (sign === 'plus') return 'less';
  if (sign === 'less') return 'plus';
  if (sign === 'times') return 'over';
  return sign === 'over' ? 'times' : sign;
}

function isSum(formula: Formula): boolean {
  return formula.op === 'add' || formula.op === 'subtract';
}

function isProduct(formula: Formula): boolean {
  return formula.op === 'multiply' || formula.op === 'divide';
}

/** Sums within sums and products within products lie in one column; anything else is a part with its own column. */
function spread(
  formula: Formula,
  sign: Sign,
  same: (formula: Formula) => boolean,
  into: { sign: Sign; formula: Formula }[],
): void {
  if (!same(formula)) {
    into.push({ sign, formula });
    return;
  }
  if (formula.op === 'add' || formula.op === 'multiply') {
    for (const part of formula.of) spread(part, sign, same, into);
  } else if (formula.op === 'subtract' || formula.op === 'divide') {
    spread(formula.left, sign, same, into);
    spread(formula.right, flip(sign), same, into);
  }
}

/** A sum of one thing is that thing. */
function plain(formula: Formula): Formula {
  const [only, ...more] = 'of' in formula && Array.isArray(formula.of) ? (formula.of as readonly Formula[]) : [];
  return only && more.length === 0 ? plain(only) : formula;
}

function pieces(asked: Formula): { sign: Sign; formula: Formula }[] {
  const formula = plain(asked);
  if (formula.op === 'ceil' || formula.op === 'round') return pieces(formula.of);
  if (formula.op === 'max') return formula.of.map((part) => ({ sign: 'most', formula: part }));
  const into: { sign: Sign; formula: Formula }[] = [];
  if (isSum(formula)) spread(formula, 'plus', isSum, into);
  else if (isProduct(formula)) spread(formula, 'times', isProduct, into);
  else into.push({ sign: 'plus', formula });
  return into;
}

/** The formula of a line as a column that can be added up by eye, first part first. */
export function whyColumn(formula: Formula, terms: readonly Term[], evaluate: Evaluate): readonly WhyPart[] {
  return pieces(formula).map(({ sign, formula: found }): WhyPart => {
    const piece = plain(found);
    const simple = piece.op === 'term' || piece.op === 'number';
    return {
      sign,
      term: piece.op === 'term' ? (terms.find((term) => term.name === piece.name) ?? null) : null,
      value: evaluate(piece),
      parts: simple ? [] : whyColumn(piece, terms, evaluate),
      roundedUp: piece.op === 'ceil',
    };
  });
}

const joint: Readonly<Record<Sign, string>> = { plus: ' + ', less: ' - ', times: ' x ', over: ' / ', most: ' or ' };

/** The likely numbers of a column in one row, "2 x 134.61 / 25", for the foot of the column. */
export function whySum(parts: readonly WhyPart[], show: (part: WhyPart) => string): string {
  let text = '';
  for (const part of parts) {
    const says = part.parts.length > 1 ? `(${whySum(part.parts, show)})` : show(part);
    if (text !== '') text += joint[part.sign];
    else if (part.sign === 'less') text += '-';
    else if (part.sign === 'over') text += '1 / ';
    text += says;
  }
  return text;
}
