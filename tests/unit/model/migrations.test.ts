import { describe, expect, it } from 'vitest';
import { openEnvelope } from '../../../src/model/envelope.ts';
import { faultInSteps, migrate, versionAfter, type Step } from '../../../src/model/migrations/steps.ts';

/** Steps as later versions may have them; only for these tests. */
const renameText: Step = {
  to: 2,
  name: 'note text becomes words',
  up: (records) =>
    Object.fromEntries(
      Object.entries(records).map(([id, fields]) => {
        if (!id.startsWith('note:')) return [id, fields];
        const { text, ...rest } = fields;
        return [id, { ...rest, words: text }];
      }),
    ),
};
const back: Step = {
  to: 3,
  name: 'and text again',
  up: (records) =>
    Object.fromEntries(
      Object.entries(records).map(([id, fields]) =>
        id.startsWith('note:') ? [id, { ...fields, text: String(fields['words']) }] : [id, fields],
      ),
    ),
};
const note = { floor: 'floor:a', tag: 'N1', at: [0, 0], text: 'Key at the gate.' };
const file = (version: number, records: object, quarantine: object = {}): unknown => ({
  format: 'slabtooth',
  version,
  minReader: 1,
  records,
  quarantine,
});

describe('migrations', () => {
  it('run the steps that a file has not seen, in order', () => {
    expect(migrate({ 'note:a': note }, 1, [renameText, back]).ran).toEqual([renameText.name, back.name]);
    expect(migrate({ 'note:a': note }, 2, [renameText, back]).ran).toEqual([back.name]);
    expect(migrate({ 'note:a': note }, 3, [renameText, back]).ran).toEqual([]);
  });
  it('open an old file as if it had been saved today', () => {
    const answer = openEnvelope(file(1, { 'note:a': note }), [renameText, back]);
    expect(answer).toMatchObject({ ok: true, migrated: [renameText.name, back.name], head: { version: 3 } });
    expect(answer.ok && answer.doc.get('note:a')).toMatchObject({ text: 'Key at the gate.' });
  });
  it('move what was kept aside along, and leave it as it was when a step cannot', () => {
    const fails: Step = {
      to: 2,
      name: 'asks too much',
      up: (records) => {
        if (records['note:b']) throw new Error('no');
        return Object.fromEntries(Object.entries(records).map(([id, fields]) => [id, { ...fields, text: 'moved' }]));
      },
    };
    const aside = {
      'note:a': { fields: { tag: 'N1' }, reason: 'r' },
      'note:b': { fields: { tag: 'N2' }, reason: 'r' },
    };
    const answer = openEnvelope(file(1, {}, aside), [fails]);
    expect(answer.ok && [...answer.quarantine.values()].map(({ fields }) => fields)).toEqual([
      { tag: 'N1', text: 'moved' },
      { tag: 'N2' },
    ]);
  });
  it('that fail leave the file unopened, with the reason', () => {
    const fails: Step = {
      to: 2,
      name: 'fails',
      up: () => {
        throw new Error('no such field');
      },
    };
    expect(openEnvelope(file(1, {}), [fails])).toEqual({ ok: false, fault: 'migrationFailed', what: 'no such field' });
  });
});

describe('the list of steps', () => {
  it('rises by one from the second version on', () => {
    expect(faultInSteps([renameText, back])).toBeNull();
    expect(faultInSteps([back])).toContain('expected 2');
    expect(faultInSteps([renameText, { ...back, to: 4 }])).toContain('expected 3');
    expect(faultInSteps([renameText, { ...renameText, to: 3 }])).toContain('two steps');
    expect(versionAfter([renameText, back])).toBe(3);
    expect(() => openEnvelope(file(1, {}), [back])).toThrow('expected 2');
  });
});
