import { describe } from 'vitest';
import { everyFamily } from './everyFamily.ts';
import { loadJury } from './oracleVotes.ts';

const jury = await loadJury();

describe('plans that are hard to measure, the other half', () => {
  everyFamily(1, jury);
});
