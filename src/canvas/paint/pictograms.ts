/**
 * Drawings of cautions and holds, as strokes on a box of 48 px: board-coloured lines of 2.6 on a plate of
 * ink, on screen and on paper. Own drawings, meant to stand beside words, never for them.
 */
const drawings = {
  /** Vacuum on before the grinder: a wheel with its shroud and hose, dust drawn off. */
  vacuum: [
    'M17 22.5a7.2 7.2 0 100 14.4 7.2 7.2 0 000-14.4z',
    'M17 29.7L28 18h10',
    'M29 28.5h3M34 24.5h2.4M34.5 31h2.4M30 34h2.4M39 28h2',
  ],
  /** Ear and eye protection. */
  earsEyes: [
    'M20.5 14.500c-7 0-9.5 6.5-8 11.3 1.6 4 3.2 4 3.2 8 0 3.2 4.8 3.2 6.4 0 .8-3.2 4.8-4.8 4.8-10.3 0-5.6-2.4-9-6.4-9z',
    'M31 19v11M35 16v17M39 13v23',
  ],
  /** Gas appliance: pilot off, air the room. */
  gas: [
    'M24 10.400c1.6 6.4 8.8 8.8 8.8 16.800a8.8 8.8 0 01-17.6 0c0-4.8 3.2-6.4 4-10.4 2.4 1.6 3.2 3.2 3.2 5.6 1.6-3.2 2.4-6.4 1.6-12z',
    'M10 39.500h28',
  ],
  /** Locate what is in the slab first: bars under the face, and where the tool must not go. */
  locate: [
    'M9 17.500h30M9 38h30',
    'M17 24a4 4 0 100 8 4 4 0 000-8zM31 24a4 4 0 100 8 4 4 0 000-8z',
    'M24 8v14M20.5 18.500L24 22.500l3.5-4',
  ],
  /** Unknown layer: test before touching. */
  unknownLayer: ['M9 23h30M9 29h30M9 35h30', 'M12 17h9v6h-9zM27 17h9v6h-9z', 'M24 8v5M24 15.500v3'],
  /** Heavy machine: two people on ramps. */
  heavy: ['M10 11h20v16H10z', 'M29 32l10 5.500H20z', 'M14 40h25M34 13v14'],
  /** Hold: work stops until signed. */
  hold: ['M11 11v26M37 11v26', 'M11 19h26v9H11z', 'M16 28l5-9M23 28l5-9M30 28l5-9'],
  /** Cords, power, wet hands. */
  electric: ['M26 8L15 26h8l-2 14 12-19h-8z'],
  /** Chips and a bursting wheel fly. */
  chips: ['M9 38h30', 'M20 38l6-8 8 2 3 6', 'M22 24l-4-8M27 22l1-10M33 24l5-7'],
  /** Skin and fume: gloves and air. */
  chemical: ['M19 9h10M21 9v10l-9 17a3 3 0 003 3h18a3 3 0 003-3l-9-17V9', 'M17 29h14'],
  /** Fire and sparks. */
  fire: ['M24 9c2 6 9 9 9 18a9 9 0 01-18 0c0-5 3-6 4-10 2 1 3 3 3 5 2-3 3-7 2-13z', 'M21 39c-2-4 0-7 3-9 3 2 5 5 3 9'],
  /** An edge with a drop behind it, and somebody too near. */
  fall: ['M9 27h16v12', 'M31 9.500a3 3 0 100 6 3 3 0 000-6z', 'M30 18l-5 7 6 3 4 7M31 28l-4 6M26 20l-6 3M33 20l6 2'],
  /** Slips: wet floor, rolling shot. */
  slips: ['M9 39h30', 'M28 9.500a3 3 0 100 6 3 3 0 000-6z', 'M26 18l-6 8 7 4-3 9M27 30l8 3M25 20l8 3'],
  /** Shaking tools and kneeling: short turns. */
  vibration: ['M18 17h12v14H18z', 'M13 19l-3 5 3 5M35 19l3 5-3 5', 'M24 31v9M24 8v9'],
  /** Water under pressure, exclusion zone. */
  jet: ['M9 22h10v6H9zM19 25h6', 'M27 25l12-9M27 25h13M27 25l12 9'],
  /** People and doors: keep others out. */
  keepOut: ['M24 9a15 15 0 100 30 15 15 0 000-30z', 'M14 24h20'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type PictogramName = keyof typeof drawings;

export const pictograms: Readonly<Record<PictogramName, readonly string[]>> = drawings;

/** Width of the strokes on their box of 48 px. */
export const PICTOGRAM_STROKE = 2.6;
