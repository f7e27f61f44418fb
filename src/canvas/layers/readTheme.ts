import type { Theme } from '../look.ts';

const TOKENS = {
  ink: '--ink',
  ink2: '--ink-2',
  rule: '--rule',
  border: '--border',
  slab: '--slab',
  ground: '--ground',
  board: '--board',
  chalk: '--chalk',
  chalkWash: '--chalk-wash',
  onChalk: '--on-chalk',
  zone1: '--z1',
  zone2: '--z2',
  zone3: '--z3',
  zone4: '--z4',
  page: '--page',
} as const;

/** How bright a colour is to the eye, 0 to 1, read back through a canvas so that any notation will do. */
function brightness(colour: string): number {
  const canvas = document.createElement('canvas');
  canvas.width = 1;
  canvas.height = 1;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) return 1;
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  const [red = 255, green = 255, blue = 255] = context.getImageData(0, 0, 1, 1).data;
  return (0.299 * red + 0.587 * green + 0.114 * blue) / 255;
}

/** Inks of the theme that is drawn now, from the tokens. Read again when the theme changes. */
export function readTheme(element: Element): Theme {
  const style = getComputedStyle(element);
  const read = (token: string): string => style.getPropertyValue(token).trim();
  const inks = Object.fromEntries(Object.entries(TOKENS).map(([ink, token]) => [ink, read(token)])) as unknown as Omit<
    Theme,
    'dark' | 'font'
  >;
  return { ...inks, dark: brightness(inks.slab) < 0.5, font: read('--font') || 'sans-serif' };
}
