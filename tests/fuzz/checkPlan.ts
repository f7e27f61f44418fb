import type { Jury } from './oracleVotes.ts';
import type { FloorShape } from '../../src/geometry/floorShape.ts';
import { type Dice, diceOf } from './dice.ts';
import { memoryFault } from './edits.ts';
import { type Numbers, measured } from './engine.ts';
import { type FamilyName } from './families.ts';
import { GROWTHS } from './growing.ts';
import { brokenLaws, difference } from './laws.ts';
import { planOf } from './plan.ts';
import { SAME_SHARE } from './tolerances.ts';
import { undecidedLines } from './undecidedLines.ts';
import { VARIANTS } from './variants.ts';
import { outsideFaults } from './votes.ts';

/** What is wrong with a plan, and by which law. */
export interface Broken {
  readonly law: string;
  readonly what: string;
}

export interface Checked {
  readonly broken: readonly Broken[];
  /** Answers on which other engines do not agree, which say nothing of ours. */
  readonly disagreements: number;
}

type Turn = {
  readonly name: string;
  readonly fault: (shape: FloorShape, measure: Numbers, dice: Dice) => string | null;
};

const sameFloor: Turn[] = Object.entries(VARIANTS).map(([name, variant]) => ({
  name,
  fault: (shape, measure, dice) => {
    const drawn = variant(shape, dice);
    if (!drawn) return null;
    const before = drawn.before ? measured(drawn.before) : measure;
    return difference(before, measured(drawn.after), SAME_SHARE, undecidedLines(shape));
  },
}));

const moreOrLess: Turn[] = Object.entries(GROWTHS).map(([name, growth]) => ({
  name,
  fault: (shape, _measure, dice) => {
    const before = growth.prepare(shape);
    return growth.fault(measured(before), measured(growth.change(before, dice)));
  },
}));

const remembered: Turn = { name: 'memory', fault: (shape, measure, dice) => memoryFault(shape, measure, dice) };

/** Which laws are looked at: those whose turn it is by the seed, all, or one by name. */
export type Which = 'turn' | 'all' | { readonly law: string };

/** What incremental answers are worth shows only in many edits: they have more turns than others. */
const TURNS = [...sameFloor, ...moreOrLess, remembered, remembered, remembered];

/** Each plan has the laws of one answer, and one more in turn. */
function turnsOf(seed: number, which: Which): Turn[] {
  if (which === 'all') return [...sameFloor, ...moreOrLess, remembered];
  if (which === 'turn') return TURNS.slice(seed % TURNS.length, (seed % TURNS.length) + 1);
  return TURNS.filter(({ name }) => name === which.law).slice(0, 1);
}

const OUTSIDE = ['outside', 'trapezoids', 'oracles', 'outlines', 'points'];

/** Every tenth plan is looked at from outside. */
function isOutside(seed: number, which: Which): boolean {
  if (which === 'turn') return seed % 10 === 0;
  return which === 'all' || OUTSIDE.includes(which.law);
}

/** Makes a plan and looks at it from all sides. */
export function checkPlan(family: FamilyName, seed: number, jury: Jury, which: Which = 'turn'): Checked {
  return checkShape(planOf(family, seed), seed, jury, which);
}

/** Measures a plan and looks at it from all sides; `seed` says which laws have their turn. */
export function checkShape(shape: FloorShape, seed: number, jury: Jury, which: Which): Checked {
  const broken: Broken[] = [];
  let disagreements = 0;
  const attempt = (law: string, look: () => readonly Broken[]): void => {
    try {
      broken.push(...look());
    } catch (error) {
      broken.push({ law, what: error instanceof Error ? error.message : String(error) });
    }
  };
  let measure: Numbers | null = null;
  attempt('answer', () => {
    measure = measured(shape);
    return brokenLaws(measure, shape);
  });
  if (!measure) return { broken, disagreements };
  const answer: Numbers = measure;
  for (const { name, fault } of turnsOf(seed, which)) {
    attempt(name, () => {
      const what = fault(shape, answer, diceOf(name, seed));
      return what ? [{ law: name, what }] : [];
    });
  }
  if (isOutside(seed, which)) {
    attempt('outside', () => {
      const votes = outsideFaults(shape, answer, diceOf('outside', seed), jury);
      disagreements += votes.disagreements;
      return votes.broken;
    });
  }
  return { broken, disagreements };
}
