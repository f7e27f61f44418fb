import { COLUMN_MM, COLUMNS, HALL, WALL_MM, WALL_X, WALL_Y } from './workshopFloor.ts';
import { FLOOR_TO_PIXEL, SCAN } from './workshopPage.ts';

/**
 * The drawing that the invented scan shows, as SVG for a browser to draw: ink on paper, then laid askew, with the
 * grain of paper and the unevenness of a scanner. Nobody's plan: we made the building up.
 */
const OUTER_MM = 300;
const ROOM = 'font-size="420" letter-spacing="60" fill="#4a4a48"';

const line = (x1: number, y1: number, x2: number, y2: number, more = ''): string =>
  `<path d="M${x1} ${y1}L${x2} ${y2}" ${more}/>`;
const box = (x: number, y: number, width: number, height: number, more = ''): string =>
  `<rect x="${x}" y="${y}" width="${width}" height="${height}" ${more}/>`;
const words = (x: number, y: number, text: string, more = 'font-size="340"'): string =>
  `<text x="${x}" y="${y}" text-anchor="middle" ${more}>${text}</text>`;

function outerWalls(): string {
  const { widthMm: w, depthMm: d } = HALL;
  const t = OUTER_MM;
  const ink = 'fill="#2b2b2a" stroke="none"';
  const thin = 'stroke-width="20"';
  return [
    box(-t, -t, 9000 + t, t, ink),
    box(12_000, -t, w - 12_000 + t, t, ink),
    box(w, 0, t, d, ink),
    box(9600, d, w - 9600 + t, t, ink),
    box(-t, d, 5600 + t, t, ink),
    box(-t, 0, t, 10_000, ink),
    box(-t, 13_000, t, 3000, ink),
    line(9000, -t, 12_000, -t, `${thin} stroke-dasharray="300 150"`),
    line(9000, 0, 12_000, 0, thin),
    line(5600, d, 9600, d, thin),
    line(5600, d + t, 9600, d + t, thin),
    line(-t, 10_000, -t, 13_000, thin),
    line(0, 10_000, 0, 13_000, thin),
    words(-1900, 11_650, 'DOCK', 'font-size="260" fill="#4a4a48"'),
  ].join('');
}

function innerWalls(): string {
  const half = WALL_MM / 2;
  const ink = 'fill="#2b2b2a" stroke="none"';
  const right = WALL_X + half;
  return [
    box(WALL_X - half, 0, WALL_MM, 8100, ink),
    box(WALL_X - half, 9000, WALL_MM, HALL.depthMm - 9000, ink),
    box(right, WALL_Y - half, 1000, WALL_MM, ink),
    box(right + 1900, WALL_Y - half, HALL.widthMm - right - 1900, WALL_MM, ink),
    box(3000, 0, WALL_MM, 2600, ink),
    box(0, 2400, 1200, WALL_MM, ink),
    box(1900, 2400, 1300, WALL_MM, ink),
    door(right, 8100, 'v'),
    door(right + 1000, WALL_Y + half, 'h'),
    door(1200, 2600, 'h', 700),
  ].join('');
}

/** A leaf standing open, and the quarter circle it swings through. */
function door(x: number, y: number, way: 'h' | 'v', leaf = 900): string {
  const thin = 'fill="none" stroke-width="18"';
  if (way === 'v') return `<path d="M${x} ${y + leaf}h${leaf}A${leaf} ${leaf} 0 0 0 ${x} ${y}" ${thin}/>`;
  return `<path d="M${x} ${y}v${leaf}A${leaf} ${leaf} 0 0 0 ${x + leaf} ${y}" ${thin}/>`;
}

function columnsAndGrid(): string {
  const half = COLUMN_MM / 2;
  const chain = 'stroke-width="14" stroke-dasharray="600 140 90 140" fill="none"';
  const columns = COLUMNS.map(([x, y]) =>
    box(x - half, y - half, COLUMN_MM, COLUMN_MM, 'fill="#2b2b2a" stroke="none"'),
  );
  const across = ['A', 'B', 'C', 'D'].map((name, index) => {
    const x = COLUMNS[index * 2]?.[0] ?? 0;
    return line(x, -2300, x, 16_900, chain) + bubble(x, -2750, name);
  });
  const down = ['1', '2'].map((name, index) => {
    const y = COLUMNS[index]?.[1] ?? 0;
    return line(-3900, y, 24_900, y, chain) + bubble(-4350, y, name);
  });
  return [...across, ...down, ...columns].join('');
}

function bubble(x: number, y: number, name: string): string {
  return `<circle cx="${x}" cy="${y}" r="420" fill="none" stroke-width="20"/>${words(x, y + 140, name, 'font-size="400"')}`;
}

/** A printed dimension: line, slanted ends, figure. */
function dimensionX(from: number, to: number, y: number, text: string): string {
  const tick = (x: number): string =>
    line(x - 130, y + 130, x + 130, y - 130, 'stroke-width="28"') + line(x, y - 260, x, y + 260, 'stroke-width="12"');
  return line(from, y, to, y, 'stroke-width="14"') + tick(from) + tick(to) + words((from + to) / 2, y - 120, text);
}

function dimensionY(from: number, to: number, x: number, text: string): string {
  const middle = (from + to) / 2;
  const tick = (y: number): string =>
    line(x - 130, y + 130, x + 130, y - 130, 'stroke-width="28"') + line(x - 260, y, x + 260, y, 'stroke-width="12"');
  return `${line(x, from, x, to, 'stroke-width="14"')}${tick(from)}${tick(to)}<text text-anchor="middle" font-size="340" transform="translate(${x - 120} ${middle}) rotate(-90)">${text}</text>`;
}

function dimensions(): string {
  return [
    dimensionX(0, 24_000, -1500, '24.00'),
    dimensionX(0, 15_000, 17_700, '15.00'),
    dimensionX(15_200, 24_000, 17_700, '8.80'),
    dimensionX(0, 5600, 16_900, '5.60'),
    dimensionX(5600, 9600, 16_900, '4.00'),
    dimensionX(9600, 24_000, 16_900, '14.40'),
    dimensionY(0, 16_000, -2900, '16.00'),
    dimensionY(0, 10_000, -1000, '10.00'),
    dimensionY(10_000, 13_000, -1000, '3.00'),
    dimensionY(0, 12_000, 25_300, '12.00'),
    dimensionY(12_200, 16_000, 25_300, '3.80'),
  ].join('');
}

function rooms(): string {
  return [
    words(11_400, 4000, 'ASSEMBLY HALL', ROOM),
    words(18_600, 8000, 'STORES', ROOM),
    words(19_600, 14_400, 'OFFICE', ROOM),
    words(1500, 1100, 'SWITCH', 'font-size="300" fill="#4a4a48"'),
    words(1500, 1500, 'ROOM', 'font-size="300" fill="#4a4a48"'),
    words(7600, 18_700, 'DRIVEWAY', 'font-size="300" fill="#4a4a48"'),
    words(10_500, -600, 'LINK HALL', 'font-size="280" fill="#4a4a48"'),
    `<path d="M22350 2000h1000v1800h-1000zl1000 1800m0-1800l-1000 1800" fill="none" stroke-width="22"/>`,
    words(22_850, 4250, 'COMPRESSOR', 'font-size="220" fill="#4a4a48"'),
    '<circle cx="17400" cy="3000" r="150" fill="none" stroke-width="20"/>',
    '<path d="M11800 12900h2100v1700h-2100z" fill="none" stroke-width="18" stroke-dasharray="200 120"/>',
    words(12_850, 13_850, 'SCALE', 'font-size="240" fill="#4a4a48"'),
    '<path d="M27900 -2300v-1800m-350 700l350 -700l350 700" fill="none" stroke-width="28"/>',
    words(27_900, -1800, 'N', 'font-size="420"'),
  ].join('');
}

function titleBlock(): string {
  return [
    box(20_400, 19_600, 13_000, 2600, 'fill="none" stroke-width="24"'),
    line(20_400, 20_900, 33_400, 20_900, 'stroke-width="14"'),
    '<text x="20700" y="20450" font-size="520">GROUND FLOOR PLAN 1:100</text>',
    '<text x="20700" y="21350" font-size="300">Invented building for trying out. No real place.</text>',
    '<text x="20700" y="21880" font-size="300">All lengths in metres. A3 sheet.</text>',
  ].join('');
}

/** The scan as an SVG document of `SCAN.widthPx` by `SCAN.heightPx` pixels. */
export function workshopScanSvg(): string {
  const { widthPx, heightPx } = SCAN;
  const ink = [outerWalls(), innerWalls(), columnsAndGrid(), dimensions(), rooms(), titleBlock()].join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}" viewBox="0 0 ${widthPx} ${heightPx}">
<defs>
<filter id="grain" x="0" y="0" width="100%" height="100%"><feTurbulence type="fractalNoise" baseFrequency="0.35" numOctaves="2" seed="7"/><feColorMatrix values="0 0 0 0 0.25  0 0 0 0 0.24  0 0 0 0 0.2  0 0 0 0.55 -0.2"/></filter>
<filter id="cloud" x="0" y="0" width="100%" height="100%"><feTurbulence type="fractalNoise" baseFrequency="0.0025 0.004" numOctaves="2" seed="3"/><feColorMatrix values="0 0 0 0 0.45  0 0 0 0 0.4  0 0 0 0 0.3  0 0 0 0.5 -0.16"/></filter>
<filter id="ink" x="-2%" y="-2%" width="104%" height="104%"><feTurbulence type="fractalNoise" baseFrequency="0.06" numOctaves="1" seed="11" result="rough"/><feDisplacementMap in="SourceGraphic" in2="rough" scale="0.9"/><feGaussianBlur stdDeviation="0.45"/></filter>
<linearGradient id="bed" x1="0" x2="1"><stop offset="0" stop-color="#000" stop-opacity="0.1"/><stop offset="0.03" stop-color="#000" stop-opacity="0"/><stop offset="0.97" stop-color="#000" stop-opacity="0"/><stop offset="1" stop-color="#000" stop-opacity="0.14"/></linearGradient>
</defs>
<rect width="${widthPx}" height="${heightPx}" fill="#8d8a84"/>
<g transform="matrix(${FLOOR_TO_PIXEL.join(' ')})"><rect x="-7250" y="-5750" width="41500" height="29200" fill="#f4f0e4"/></g>
<g filter="url(#ink)"><g transform="matrix(${FLOOR_TO_PIXEL.join(' ')})" font-family="sans-serif" fill="#2b2b2a" stroke="none">
<g stroke="#2b2b2a" stroke-linecap="square"><g stroke-width="20">${ink.replaceAll('<text ', '<text stroke="none" ')}</g></g></g></g>
<rect width="${widthPx}" height="${heightPx}" filter="url(#cloud)"/>
<rect width="${widthPx}" height="${heightPx}" filter="url(#grain)" opacity="0.5"/>
<path d="M${widthPx / 2} 0V${heightPx}" stroke="#6b6353" stroke-opacity="0.16" stroke-width="3"/>
<rect width="${widthPx}" height="${heightPx}" fill="url(#bed)"/>
</svg>`;
}
