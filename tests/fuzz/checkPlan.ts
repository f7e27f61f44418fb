import type { FloorShape } from '../../src/geometry/floorShape.ts';
import type { Oracle } from '../support/oracles/oracle.ts';
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

/** What is wrong with one plan; `family` and `seed` make it again. */
export interface Failure {
  readonly family: FamilyName;
  readonly seed: number;
  readonly what: string;
}

export interface Checked {
  readonly failures: readonly Failure[];
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

const remembered: Turn = { name: 'memory', fault: (shape, _measure, dice) => memoryFault(shape, dice) };

/** Each plan has the laws of one answer; of the others it takes one of each list in turn. */
function turnsOf(seed: number, all: boolean): Turn[] {
  if (all) return [...sameFloor, ...moreOrLess, remembered];
  const inTurn = (list: readonly Turn[]): Turn[] => list.slice(seed % list.length, (seed % list.length) + 1);
  return [...inTurn(sameFloor), ...inTurn(moreOrLess), ...(seed % 3 === 0 ? [remembered] : [])];
}

/** Makes a plan, measures it and looks at it from all sides. With `all` no law waits for its turn. */
export function checkPlan(family: FamilyName, seed: number, oracles: readonly Oracle[], all = false): Checked {
  const wrong: string[] = [];
  let disagreements = 0;
  const attempt = (name: string, look: () => readonly string[]): void => {
    try {
      wrong.push(...look().map((fault) => (fault.startsWith(name) ? fault : `${name}: ${fault}`)));
    } catch (error) {
      wrong.push(`${name}: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  const shape = planOf(family, seed);
  let measure: Numbers | null = null;
  attempt('', () => {
    measure = measured(shape);
    return brokenLaws(measure, shape);
  });
  if (measure) {
    const answer: Numbers = measure;
    for (const { name, fault } of turnsOf(seed, all)) {
      attempt(name, () => {
        const found = fault(shape, answer, diceOf(name, seed));
        return found ? [found] : [];
      });
    }
    if (all || seed % 10 === 0) {
      attempt('outside', () => {
        const votes = outsideFaults(shape, answer, diceOf('outside', seed), oracles);
        disagreements += votes.disagreements;
        return votes.faults;
      });
    }
  }
  return { failures: wrong.map((what) => ({ family, seed, what })), disagreements };
}
