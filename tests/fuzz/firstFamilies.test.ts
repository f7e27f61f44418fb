import { describe } from 'vitest';
import { everyFamily } from './everyFamily.ts';
import { loadOracles } from './oracleVotes.ts';

const oracles = await loadOracles();

describe('plans that are hard to measure, one half', () => {
  everyFamily(0, oracles);
});
