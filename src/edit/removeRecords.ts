import type { Cell, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import { recordsOf, type Doc } from '../model/doc.ts';
import type { Command } from './command.ts';

export type RemoveRecordsArgs = { readonly ids: readonly RecordId[] };

/** Nothing is deleted: records are marked gone, and what hangs on them goes along and says with whom. */
export const removeRecords: Command<RemoveRecordsArgs> = {
  name: 'removeRecords',
  refuse(doc, { ids }) {
    if (ids.length === 0 || ids.some((id) => !doc.has(id))) return 'unknownRecord';
    if (ids.some((id) => typeOf(id) === 'job')) return 'jobStays';
    const floorsGoing = ids.filter((id) => typeOf(id) === 'floor').length;
    if (floorsGoing > 0 && floorsGoing >= recordsOf(doc, 'floor').length) return 'lastFloor';
    const used = recordsOf(doc, 'pass').some((pass) => pass.machine !== null && ids.includes(pass.machine));
    const follows = recordsOf(doc, 'recipe').some((recipe) => recipe.followedBy?.some((id) => ids.includes(id)));
    return used || follows ? 'machineInUse' : null;
  },
  write: (doc, { ids }) => ids.flatMap((id) => goneCells(doc, id, ids)),
};

function goneCells(doc: Doc, id: RecordId, together: readonly RecordId[]): readonly Cell[] {
  const along: Cell[] = childrenOf(doc, id)
    .filter((child) => !together.includes(child))
    .flatMap((child): Cell[] => [
      [child, 'gone', true],
      [child, 'goneWith', id],
    ]);
  return [[id, 'gone', true], ...along];
}

/** Records that have no meaning without this one and are not gone already. */
function childrenOf(doc: Doc, id: RecordId): readonly RecordId[] {
  const slot = PARENT_SLOT[typeOf(id)];
  if (!slot) return [];
  const children: RecordId[] = [];
  for (const [child, fields] of doc) {
    if (fields['gone'] === true || fields[slot] !== id) continue;
    children.push(child);
    if (slot === 'floor') children.push(...childrenOf(doc, child));
  }
  return children;
}

const PARENT_SLOT: Readonly<Record<string, string>> = { wall: 'wall', floor: 'floor', recipe: 'recipe' };
