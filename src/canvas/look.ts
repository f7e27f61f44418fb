import type { Ink } from './paint/prim.ts';

/** Line weights and sizes in screen px: they stay the same at any zoom. */
export const LINE = { hair: 1, thin: 1.5, item: 2.5, edge: 4, live: 4, wall: 8 } as const;

/** Slab-coloured halo of lines on the floor, each side. */
export const HALO_PX = 3;

/** On paper one px of a painter is this many millimetres. */
export const PAPER_MM_PER_PX = 0.26;

/** Below this scale only zone numbers stay on the plan. */
export const TAGS_FROM_PX_PER_M = 12;
/** Below this one what is wrong with the floor keeps its tags on the screen, and the ways through it. */
export const ALL_TAGS_FROM_PX_PER_M = 20;

/** Share of ink in a hatch. */
export const HATCH_OPACITY = { screen: 0.6, paper: 0.85, reach: 0.75 } as const;

/** The finger: the point stands this far above the contact ring, which is so wide. */
export const FINGER = { abovePx: 72, ringPx: 56 } as const;

/** Letters on the plan: the screen is read at arm's length in a glove, paper is held in the hand. */
export const LETTERS = {
  screen: { tag: 14.5, zone: 31, dimension: 16, note: 15 },
  paper: { tag: 10.5, zone: 25, dimension: 11.5, note: 11 },
} as const;

/** A colour for every ink. On screen it is read from the tokens; on paper there is black and white. */
export type Theme = Readonly<Record<Ink, string>> & { readonly dark: boolean; readonly font: string };

export const PAPER_THEME: Theme = {
  dark: false,
  font: "'Overpass Variable', Overpass, sans-serif",
  ink: 'black',
  ink2: 'black',
  rule: 'black',
  border: 'black',
  slab: 'white',
  ground: 'white',
  board: 'white',
  chalk: 'black',
  chalkWash: 'white',
  onChalk: 'white',
  zone1: 'white',
  zone2: 'white',
  zone3: 'white',
  zone4: 'white',
  page: 'black',
};

/** Tints of the zones repeat after four: number and hatch tell them apart. */
export function zoneInk(index: number): Ink {
  return (['zone1', 'zone2', 'zone3', 'zone4'] as const)[index % 4] ?? 'zone1';
}
