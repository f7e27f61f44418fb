import { describe } from 'vitest';
import { everyFamily } from './everyFamily.ts';

describe('plans that are hard to measure, the other half', () => {
  everyFamily(1);
});
