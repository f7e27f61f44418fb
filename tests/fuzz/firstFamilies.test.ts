import { describe } from 'vitest';
import { everyFamily } from './everyFamily.ts';
import { loadJury } from './oracleVotes.ts';

const jury = await loadJury();

describe('plans that are hard to measure, one half', () => {
  everyFamily(0, jury);
});
