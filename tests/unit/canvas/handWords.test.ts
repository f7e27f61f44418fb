import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { commands } from '../../../src/edit/commands.ts';
import { commandLabels, hintCodes, hintSentence, refusalCodes, refusalSentence } from '../../../src/words/handWords.ts';
import { toolbox } from '../../../src/canvas/tools/toolbox.ts';
import { emptyPlan, FLOOR, countingIds } from '../../support/handPlan.ts';

const sources = ['src/edit', 'src/canvas/tools'].flatMap((folder) =>
  readdirSync(folder).map((file) => readFileSync(`${folder}/${file}`, 'utf8')),
);

/** Codes as they stand in the source: `'code'` after return, a question mark, a colon or `refused:`. */
function codesIn(pattern: RegExp): readonly string[] {
  return [...new Set(sources.flatMap((text) => [...text.matchAll(pattern)].map((match) => match[1] ?? '')))];
}

test('every command has a label for its undo step', () => {
  expect(Object.keys(commandLabels).toSorted()).toEqual(Object.keys(commands).toSorted());
});

test('every refusal in the source has a sentence that says what to do', () => {
  const codes = [
    ...codesIn(/refused: '(\w+)'/g),
    ...codesIn(/return '(\w+)';/g),
    ...codesIn(/\? '(\w+)' : (?:null|refuse)/g),
    ...codesIn(/\? null : '(\w+)'/g),
  ];
  expect(codes.length).toBeGreaterThan(25);
  const known = new Set(refusalCodes);
  const others = new Set([...hintCodes, 'run']);
  expect(codes.filter((code) => !known.has(code) && !others.has(code))).toEqual([]);
  for (const code of refusalCodes) expect(refusalSentence(code)).toMatch(/^[A-Z].*\.$/);
});

test('every tool at rest has a hint', () => {
  const env = { doc: emptyPlan, floor: FLOOR, picked: [], newId: countingIds(), settings: {} };
  for (const [id, tool] of Object.entries(toolbox)) {
    expect(hintSentence(tool.draft(null, env).hint), id).toMatch(/^[A-Z].*\.$/);
  }
  for (const code of hintCodes) expect(hintSentence(code)).toMatch(/\.$/);
});
