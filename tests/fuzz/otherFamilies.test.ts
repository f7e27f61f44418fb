import { describe } from 'vitest';
import { everyFamily } from './everyFamily.ts';
import { loadOracles } from './oracleVotes.ts';

const oracles = await loadOracles();

describe('plans that are hard to measure, the other half', () => {
  everyFamily(1, oracles);
});
