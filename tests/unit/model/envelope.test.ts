import { describe, expect, it } from 'vitest';
import { openEnvelope, VERSION, writeEnvelope, type Opened } from '../../../src/model/envelope.ts';
import { everyKind } from '../../support/everyKind.ts';

const NONE = new Map();
const envelope = (records: unknown, more: object = {}): unknown => ({
  format: 'slabtooth',
  version: 1,
  minReader: 1,
  records,
  quarantine: {},
  ...more,
});

function opened(json: unknown): Opened {
  const answer = openEnvelope(json);
  if (!answer.ok) throw new Error(answer.fault);
  return answer;
}

describe('what is written opens again', () => {
  it('record by record, with every field', () => {
    const answer = opened(JSON.parse(writeEnvelope(everyKind, NONE)));
    expect(answer.doc).toEqual(everyKind);
    expect(answer.quarantine.size).toBe(0);
    expect(answer.broken).toEqual([]);
    expect(answer.readOnly).toBe(false);
  });
  it('the same text whatever order records and fields were made in', () => {
    const backwards = new Map(
      [...everyKind].toReversed().map(([id, fields]) => [id, Object.fromEntries(Object.entries(fields).toReversed())]),
    );
    expect(writeEnvelope(backwards, NONE)).toBe(writeEnvelope(everyKind, NONE));
  });
  it('one record a line, sorted by id', () => {
    const lines = writeEnvelope(everyKind, NONE)
      .split('\n')
      .filter(
        (line) =>
          /^"[a-z]/i.test(line) &&
          line.includes(':{') &&
          !line.startsWith('"records"') &&
          !line.startsWith('"quarantine"'),
      );
    expect(lines).toHaveLength(everyKind.size);
    expect(lines).toEqual(lines.toSorted());
  });
  it('fields and kinds of a newer app survive', () => {
    const records = {
      'note:a': { floor: 'floor:a', tag: 'N1', at: [0, 0], text: 'x', glow: { deep: [1] } },
      'lamp:a': { lumen: 800 },
    };
    const answer = opened(envelope(records));
    const again = opened(JSON.parse(writeEnvelope(answer.doc, answer.quarantine, answer.head)));
    expect(Object.fromEntries(again.doc)).toEqual(records);
  });
});

describe('a record that cannot be read', () => {
  const bad = { floor: 'floor:a', tag: 'C1', path: [[0, 0]], widthMm: 'wide', behaviour: 'static' };

  it('is kept aside with the reason, and is still there after a round trip', () => {
    const answer = opened(envelope({ 'crack:a': bad }));
    expect(answer.doc.size).toBe(0);
    expect(answer.quarantine.get('crack:a')).toMatchObject({ fields: bad, reason: expect.stringContaining('path') });
    const again = opened(JSON.parse(writeEnvelope(answer.doc, answer.quarantine, answer.head)));
    expect(again.quarantine).toEqual(answer.quarantine);
  });
  it('comes back when a later app can read it', () => {
    const good = {
      ...bad,
      path: [
        [0, 0],
        [1, 1],
      ],
      widthMm: 1,
      depthMm: null,
    };
    const answer = opened(envelope({}, { quarantine: { 'crack:a': { fields: good, reason: 'old' } } }));
    expect(answer.doc.get('crack:a')).toEqual(good);
    expect(answer.quarantine.size).toBe(0);
  });
  it('is kept even without an id or fields', () => {
    const answer = opened(envelope({ nonsense: { a: 1 }, 'crack:b': 'text', 'crack:c': null }));
    expect(answer.quarantine.size).toBe(3);
    expect(JSON.stringify([...answer.quarantine])).toContain('nonsense');
    const again = opened(JSON.parse(writeEnvelope(answer.doc, answer.quarantine)));
    expect(again.quarantine).toEqual(answer.quarantine);
  });
  it('does not push out another that was kept before it', () => {
    const answer = opened(
      envelope({ 'crack:a': bad }, { quarantine: { 'crack:a': { fields: { older: true }, reason: 'old' } } }),
    );
    expect([...answer.quarantine.values()].map(({ fields }) => fields)).toEqual([bad, { older: true }]);
  });
});

describe('a file of another version', () => {
  it('opens read-only when it asks for a newer reader, and says which version it is', () => {
    const answer = opened(envelope({}, { version: VERSION + 3, minReader: VERSION + 1 }));
    expect(answer.readOnly).toBe(true);
  });
  it('keeps its numbers when we may write it, so that no step is run twice', () => {
    const answer = opened(envelope({}, { version: VERSION + 3 }));
    expect(answer.readOnly).toBe(false);
    expect(JSON.parse(writeEnvelope(answer.doc, answer.quarantine, answer.head))).toMatchObject({
      version: VERSION + 3,
      minReader: 1,
    });
  });
});

describe('what is no job is refused with a code', () => {
  const deep = (levels: number): unknown => (levels === 0 ? 1 : [deep(levels - 1)]);
  it.each([
    [null, 'notAJob'],
    [[], 'notAJob'],
    ['slabtooth', 'notAJob'],
    [{ format: 'other', version: 1, minReader: 1, records: {} }, 'notAJob'],
    [{ format: 'slabtooth', minReader: 1, records: {} }, 'damagedJob'],
    [{ format: 'slabtooth', version: 1.5, minReader: 1, records: {} }, 'damagedJob'],
    [{ format: 'slabtooth', version: 1, minReader: 1 }, 'damagedJob'],
    [{ format: 'slabtooth', version: 1, minReader: 1, records: [] }, 'damagedJob'],
    [envelope({ 'lamp:a': { x: deep(80) } }), 'tooDeep'],
  ])('%j', (json, fault) => {
    expect(openEnvelope(json)).toMatchObject({ ok: false, fault });
  });
});
