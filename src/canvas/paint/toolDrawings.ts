/** One stroke or fill of a drawing on a 28 px box. */
export interface DrawingStroke {
  readonly d: string;
  readonly width?: number;
  readonly opacity?: number;
  readonly dash?: string;
  readonly filled?: boolean;
}

const frame: DrawingStroke = { d: 'M3 3h22v22H3z', width: 1.5, opacity: 0.42 };

const drawings = {
  pick: [{ d: 'M8 8h12v12H8z', width: 1.5, opacity: 0.42 }, { d: 'M8 3v5H3M20 3v5h5M8 25v-5H3M20 25v-5h5' }],
  slab: [{ d: 'M4 4h20v11H15v9H4z', filled: true, opacity: 0.25 }, { d: 'M4 4h20v11h-9v9H4z' }],
  zone: [{ d: 'M4 4h20v20H4z' }, { d: 'M4 14l4-4 4 4 4-4 4 4 4-4M4 20l4-4 4 4 4-4 4 4 4-4', width: 1.6 }],
  finding: [
    frame,
    { d: 'M8 11l6-4 7 4-1 7-8 3-5-5z' },
    { d: 'M11 12h2v2h-2zM15 11h2v2h-2zM13 15h2v2h-2zM17 15h2v2h-2z', filled: true },
  ],
  outOfScope: [{ d: 'M4 4h20v20H4z', dash: '4 3' }, { d: 'M9 19L19 9' }],
  edgeKind: [
    { d: 'M5 4h18v18H5z', width: 1.5, opacity: 0.42 },
    { d: 'M3 23h9M18 23h7', width: 4 },
  ],
  upstand: [{ d: 'M3 23h13V8h5v15h4' }, { d: 'M16 23V8', width: 4 }],
  opening: [{ d: 'M2 14h7M19 14h7', width: 4 }, { d: 'M9 8v12M19 8v12' }],
  steps: [{ d: 'M3 24h6v-5h5v-5h5V9h6' }, { d: 'M9 19v5M14 14v10M19 9v15', width: 1.2, opacity: 0.42 }],
  crack: [frame, { d: 'M6 25l4-7 3-2 1-6 5-3 2-4', width: 2.6 }],
  joint: [
    { d: 'M9 3v22M19 3v22', width: 1.5, opacity: 0.42 },
    { d: 'M14 2v24', width: 2.6, dash: '6 3' },
  ],
  wall: [
    { d: 'M2 10h24v8H2z', filled: true, opacity: 0.3 },
    { d: 'M2 9h24M2 19h24', width: 2.6 },
  ],
  dimension: [{ d: 'M4 6v16M24 6v16M4 14h20M8 10l-4 4 4 4M20 10l4 4-4 4' }],
  obstruction: [frame, { d: 'M9 9h10v10H9z', filled: true }],
  entrance: [
    { d: 'M3 4v20M3 24h9M3 4h9', width: 4 },
    { d: 'M25 14H9M15 8l-6 6 6 6', width: 2.4 },
  ],
  reading: [{ d: 'M14 26V14M4 4h20v10H4z' }, { d: 'M8 9h4M15 9h5', width: 2.4 }],
  photo: [{ d: 'M14 24L4 6h20z' }, { d: 'M11 21h6v5h-6z', filled: true }],
  note: [{ d: 'M4 4h20v14h-9l-6 6v-6H4z' }],
  true: [
    { d: 'M4 20h20M4 16v8M24 16v8', width: 2.4 },
    { d: 'M6 11L14 4l8 7M14 4v9', width: 2 },
  ],
  machine: [
    { d: 'M14 3a8 8 0 100 16 8 8 0 000-16zM14 19v7M9 26h10' },
    { d: 'M14 8.6a2.4 2.4 0 100 4.8 2.4 2.4 0 000-4.8z', filled: true },
  ],
  handTool: [{ d: 'M9 13a6 6 0 100 12 6 6 0 000-12z' }, { d: 'M13 15L24 4', width: 3.4 }],
} as const satisfies Readonly<Record<string, readonly DrawingStroke[]>>;

export type ToolDrawingName = keyof typeof drawings;

/** The drawing of every tool, group of tools and machine. Always beside its word. */
export const toolDrawings: Readonly<Record<ToolDrawingName, readonly DrawingStroke[]>> = drawings;
