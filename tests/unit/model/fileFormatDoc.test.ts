import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { VERSION } from '../../../src/model/envelope.ts';
import { schemaFields } from '../../support/schemaFields.ts';

const page = readFileSync(join(import.meta.dirname, '../../../docs/file-format.md'), 'utf8');

interface Row {
  readonly slot: string;
  readonly kind: string;
  readonly needed: string;
}

/** Rows of the table under each third heading. */
function sections(text: string): ReadonlyMap<string, { readonly text: string; readonly rows: readonly Row[] }> {
  const parts = text.split(/^#{2,3} /m).slice(1);
  return new Map(
    parts.map((part) => {
      const [title = ''] = part.split('\n', 1);
      const rows = [...part.matchAll(/^\| `([^`]+)` \| ([^|]+) \| (yes|no) \|/gm)];
      return [
        title,
        { text: part, rows: rows.map(([, slot = '', kind = '', needed = '']) => ({ slot, kind, needed })) },
      ] as const;
    }),
  );
}

/** All that the page says of a kind of record, objects that have a section of their own written out. */
function said(text: string, type: string): string[] {
  const all = sections(text);
  const rowsOf = (title: string): readonly Row[] => all.get(title)?.rows ?? [];
  const own = all.get(type);
  const rows = [
    ...rowsOf('Every record'),
    ...(own?.text.includes('An item.') ? rowsOf('Every item') : []),
    ...(own?.rows ?? []),
  ];
  return rows
    .flatMap(({ slot, kind, needed }) => {
      const inner = ['answer', 'clearance', 'upstand'].includes(kind) ? rowsOf(kind) : [];
      return [
        `${slot}: ${inner.length > 0 ? 'object' : kind}, ${needed}`,
        ...inner.map((field) => `${slot}.${field.slot}: ${field.kind}, ${field.needed}`),
      ];
    })
    .toSorted((a, b) => (a < b ? -1 : 1));
}

function inSchema(type: string): string[] {
  const fields = schemaFields().get(type) ?? [];
  return fields
    .map(({ slot, kind, optional }) => `${slot}: ${kind}, ${optional ? 'no' : 'yes'}`)
    .toSorted((a, b) => (a < b ? -1 : 1));
}

describe('docs/file-format.md', () => {
  it.each([...schemaFields().keys()])(
    'tells every field of %s, its kind and whether it is needed, and no other',
    (type) => {
      expect(inSchema(type).length).toBeGreaterThan(3);
      expect(said(page, type)).toEqual(inSchema(type));
    },
  );
  it('tells the version that we write', () => {
    expect(page).toContain(`this page tells version ${VERSION}`);
  });
  it('a line taken out would be missed: the check can fail', () => {
    const without = page.replace(/^\| `behaviour`.*\n/m, '');
    expect(said(without, 'crack')).not.toEqual(inSchema('crack'));
  });
});
