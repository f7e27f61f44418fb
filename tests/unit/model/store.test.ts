import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../src/model/cell.ts';
import { recordOf, type Doc } from '../../../src/model/doc.ts';
import { planStore, RefusedChange } from '../../../src/model/store.ts';
import { everyKind } from '../../support/everyKind.ts';

const nameIn = (doc: Doc): string => recordOf(doc, 'floor', 'floor:a')?.name ?? '';
const rename = (name: string): Cell[] => [['floor:a', 'name', name]];

describe('a plan store', () => {
  it('commits cells, keeps what nothing changed, and freezes the change', () => {
    const store = planStore({ doc: everyKind, device: 'desk', tick: 7 });
    const change = store.commit('renameFloor', rename('Hall'));
    expect(change).toMatchObject({
      label: 'renameFloor',
      origin: 'local',
      stamp: { tick: 8, device: 'desk' },
      before: rename('Ground floor'),
    });
    expect(Object.isFrozen(change)).toBe(true);
    expect(store.getState().get('floor:a')).toMatchObject({ name: 'Hall', level: 0 });
    expect(store.getState().get('slab:a')).toBe(everyKind.get('slab:a'));
    expect(everyKind.get('floor:a')).toMatchObject({ name: 'Ground floor' });
  });
  it('refuses a local change whole when a record would not parse', () => {
    const store = planStore({ doc: everyKind });
    const cells: Cell[] = [
      ['note:a', 'text', 'kept out'],
      ['crack:a', 'path', [[0, 0]]],
    ];
    expect(() => store.commit('bad', cells)).toThrow(RefusedChange);
    expect(store.getState()).toBe(everyKind);
    expect(store.steps().undo).toEqual([]);
    expect(store.tick()).toBe(0);
  });
  it('puts aside what a remote change makes unreadable, and takes the rest', () => {
    const store = planStore({ doc: everyKind });
    store.commit(
      'theirs',
      [
        ['note:a', 'text', 'theirs'],
        ['crack:a', 'path', [[0, 0]]],
      ],
      'remote',
    );
    expect(store.getState().get('note:a')).toMatchObject({ text: 'theirs' });
    expect(store.getState().has('crack:a')).toBe(false);
    expect(store.quarantine().get('crack:a')).toMatchObject({ fields: { path: [[0, 0]], tag: 'C1' } });
  });
  it('tells listeners what was and what is, until they leave', () => {
    const store = planStore({ doc: everyKind });
    const heard: string[] = [];
    const leave = store.subscribe((now, was) => heard.push(`${nameIn(was)} > ${nameIn(now)}`));
    const leaveChanges = store.onChange((change) => heard.push(change.label));
    store.commit('one', rename('A'));
    leave();
    leaveChanges();
    store.commit('two', rename('B'));
    expect(heard).toEqual(['one', 'Ground floor > A']);
    expect(store.getInitialState()).toBe(everyKind);
  });
});

describe('undo and redo', () => {
  it('take one step a gesture, and name it', () => {
    const store = planStore({ doc: everyKind });
    store.commit('first', rename('A'));
    store.commit('second', rename('B'));
    expect(store.steps()).toEqual({ undo: ['second', 'first'], redo: [] });
    store.undo();
    expect(store.getState().get('floor:a')).toMatchObject({ name: 'A' });
    expect(store.steps()).toEqual({ undo: ['first'], redo: ['second'] });
    store.redo();
    expect(store.getState().get('floor:a')).toMatchObject({ name: 'B' });
  });
  it('take back the making of a record', () => {
    const store = planStore({ doc: everyKind });
    store.commit('make', [['person:b', 'name', 'B. Helper']]);
    store.undo();
    expect(store.getState()).toEqual(everyKind);
  });
  it('say when there is nothing to take back', () => {
    const store = planStore({ doc: everyKind });
    expect(store.undo()).toBeNull();
    expect(store.redo()).toBeNull();
  });
  it('forget what was undone when something new is done', () => {
    const store = planStore({ doc: everyKind });
    store.commit('first', rename('A'));
    store.undo();
    store.commit('other', rename('B'));
    expect(store.redo()).toBeNull();
  });
  it('never write over another device: whole or not at all', () => {
    const store = planStore({ doc: everyKind });
    store.commit('mine', [...rename('mine'), ['note:a', 'text', 'mine']]);
    store.commit('theirs', rename('theirs'), 'remote');
    expect(store.undo()).toBe('overtaken');
    expect(store.getState().get('floor:a')).toMatchObject({ name: 'theirs' });
    expect(store.getState().get('note:a')).toMatchObject({ text: 'mine' });
  });
  it('pass over a step that another device has overtaken, and take the one before', () => {
    const store = planStore({ doc: everyKind });
    const before = store.getState().get('note:a')?.['text'];
    store.commit('first', [['note:a', 'text', 'mine']]);
    store.commit('second', rename('mine'));
    store.commit('theirs', rename('theirs'), 'remote');
    let told = 0;
    store.subscribe(() => (told += 1));
    expect(store.undo()).toBe('overtaken');
    expect(store.steps()).toEqual({ undo: ['first'], redo: [] });
    expect(told).toBe(1);
    expect(store.undo()).toMatchObject({ label: 'first' });
    expect(store.getState().get('note:a')).toMatchObject({ text: before });
    expect(store.getState().get('floor:a')).toMatchObject({ name: 'theirs' });
    expect(store.undo()).toBeNull();
  });
  it('leave a step that was passed over whole: one before it that shares a field stands as well', () => {
    const store = planStore({ doc: everyKind });
    store.commit('first', [['note:a', 'text', 'first']]);
    store.commit('second', [...rename('mine'), ['note:a', 'text', 'second']]);
    store.commit('theirs', rename('theirs'), 'remote');
    expect(store.undo()).toBe('overtaken');
    expect(store.undo()).toBe('overtaken');
    expect(store.undo()).toBeNull();
    expect(store.getState().get('note:a')).toMatchObject({ text: 'second' });
  });
  it('pass over a redo that was overtaken, too', () => {
    const store = planStore({ doc: everyKind });
    store.commit('first', [['note:a', 'text', 'mine']]);
    store.commit('second', rename('mine'));
    store.undo();
    store.undo();
    store.commit('theirs', [['note:a', 'text', 'theirs']], 'remote');
    expect(store.redo()).toBe('overtaken');
    expect(store.redo()).toMatchObject({ label: 'second' });
    expect(store.getState().get('note:a')).toMatchObject({ text: 'theirs' });
  });
  it('go on beside remote changes of other fields', () => {
    const store = planStore({ doc: everyKind });
    store.commit('mine', rename('mine'));
    store.commit('theirs', [['note:a', 'text', 'theirs']], 'remote');
    store.undo();
    expect(store.getState().get('floor:a')).toMatchObject({ name: 'Ground floor' });
    expect(store.getState().get('note:a')).toMatchObject({ text: 'theirs' });
  });
});
