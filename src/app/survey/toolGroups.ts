import type { groupWords } from '../../words/surveyWords.ts';

/** Tools by what they measure. The letters are those of canvas/input/keys.ts. */
export type GroupName = keyof typeof groupWords;

export interface ToolGroup {
  readonly name: GroupName;
  readonly tools: readonly string[];
}

export const TOOL_GROUPS: readonly ToolGroup[] = [
  { name: 'floor', tools: ['slab', 'finding', 'outOfScope'] },
  { name: 'edge', tools: ['edgeKind', 'upstand', 'opening', 'entrance'] },
  { name: 'line', tools: ['crack', 'joint', 'wall', 'dimension'] },
  { name: 'spot', tools: ['obstruction', 'steps', 'reading', 'note'] },
];

/** The drawing that stands for a whole group on tablet and phone. */
export const GROUP_DRAWING = { floor: 'slab', edge: 'edgeKind', line: 'crack', spot: 'obstruction' } as const;

export function groupOf(tool: string): GroupName | null {
  return TOOL_GROUPS.find((group) => group.tools.includes(tool))?.name ?? null;
}
