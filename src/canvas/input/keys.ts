/** What a key does, for any tool. Letters come from the names of our items and are listed in the app. */
export type KeyAction =
  | { readonly kind: 'tool'; readonly id: string }
  | { readonly kind: 'finish' | 'back' | 'cancel' | 'remove' | 'undo' | 'redo' | 'fit' | 'zoomIn' | 'zoomOut' }
  /** Steps across and down; large with shift. */
  | { readonly kind: 'nudge'; readonly dx: number; readonly dy: number; readonly large: boolean };

/** Plain facts of a key event. */
export interface KeyPress {
  /** As `KeyboardEvent.key` gives it. */
  readonly key: string;
  readonly shift: boolean;
  /** Ctrl, or Command on a Mac. */
  readonly command: boolean;
  readonly alt: boolean;
  /** The focus is in a field: letters belong to it. */
  readonly typing: boolean;
}

export const TOOL_LETTERS: Readonly<Record<string, string>> = {
  s: 'slab',
  w: 'wall',
  o: 'opening',
  b: 'obstruction',
  e: 'edgeKind',
  u: 'upstand',
  c: 'crack',
  j: 'joint',
  f: 'finding',
  z: 'zone',
  x: 'outOfScope',
  m: 'entrance',
  d: 'dimension',
  r: 'reading',
  n: 'note',
  t: 'steps',
};

/** The letter that takes a tool in hand; null for Pick, which Esc comes back to. */
export function letterOf(tool: string): string | null {
  return Object.entries(TOOL_LETTERS).find(([, id]) => id === tool)?.[0] ?? null;
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const PLAIN: Readonly<Record<string, 'finish' | 'back' | 'remove' | 'zoomIn' | 'zoomOut' | 'fit'>> = {
  Enter: 'finish',
  Backspace: 'back',
  Delete: 'remove',
  '+': 'zoomIn',
  '=': 'zoomIn',
  '-': 'zoomOut',
  '0': 'fit',
};

/** Null: the key is not ours, and goes where it would have gone. */
export function keyAction(press: KeyPress): KeyAction | null {
  if (press.key === 'Escape') return { kind: 'cancel' };
  if (press.typing) return null;
  const key = press.key.length === 1 ? press.key.toLowerCase() : press.key;
  if (press.command) return commandAction(key, press.shift);
  if (press.alt) return null;
  const arrow = Object.hasOwn(ARROWS, key) ? ARROWS[key] : undefined;
  if (arrow) return { kind: 'nudge', dx: arrow[0], dy: arrow[1], large: press.shift };
  const plain = Object.hasOwn(PLAIN, key) ? PLAIN[key] : undefined;
  if (plain) return { kind: plain };
  const tool = Object.hasOwn(TOOL_LETTERS, key) && !press.shift ? TOOL_LETTERS[key] : undefined;
  return tool ? { kind: 'tool', id: tool } : null;
}

function commandAction(key: string, shift: boolean): KeyAction | null {
  if (key === 'z') return { kind: shift ? 'redo' : 'undo' };
  return key === 'y' ? { kind: 'redo' } : null;
}
