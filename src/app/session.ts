import { create } from 'zustand';
import type { Json, RecordId } from '../model/cell.ts';
import type { Camera } from '../canvas/camera.ts';
import type { Point } from '../geometry/floorShape.ts';

/**
 * What belongs to this device and this hand, and is never in the plan: the stage, the tool, what is picked,
 * where the camera stands. Read it with `useSession((s) => s.picked)`, change it with the functions below.
 */
export const STAGES = ['survey', 'prep', 'takeoff', 'crew', 'handover'] as const;
export type Stage = (typeof STAGES)[number];
export type Theme = 'device' | 'light' | 'dark' | 'daylight';
export type Units = 'metric' | 'imperial';
export type Settings = Readonly<Record<string, Json | undefined>>;

/** One sentence in the strip under the top bar, with at most one thing to do about it. */
export interface Notice {
  readonly text: string;
  readonly doIt?: { readonly words: string; readonly run: () => void };
}

export interface Session {
  readonly stage: Stage;
  readonly floor: RecordId | null;
  /** An id of src/canvas/tools/toolbox.ts. */
  readonly tool: string;
  readonly toolState: unknown;
  /** What the entry bar holds for the next item, by tool. */
  readonly settings: Readonly<Record<string, Settings>>;
  readonly picked: readonly RecordId[];
  /** Edges of the picked slab that the sheet speaks of. */
  readonly pickedEdges: readonly number[];
  readonly cameras: Readonly<Record<string, Camera>>;
  readonly theme: Theme;
  /** Set when this device shows other units than the job asks for. */
  readonly units: Units | null;
  /** Key of the takeoff line whose working is open (the Why dock), or null. */
  readonly why: string | null;
  /** Key of the takeoff line whose geometry is lit on the plan, or null. */
  readonly lit: string | null;
  readonly notice: Notice | null;
  /** The one dialog or menu sheet that is open, by name, or null. */
  readonly panel: string | null;
  /** The page that is being trued, or null. */
  readonly truing: RecordId | null;
  /** Where somebody asked why no machine works there, floor mm; or null. */
  readonly spot: Point | null;
}

const DEVICE_KEY = 'slabtooth.device';

function fromDevice(): Pick<Session, 'theme' | 'units'> {
  try {
    const kept = JSON.parse(localStorage.getItem(DEVICE_KEY) ?? '{}') as Partial<Session>;
    const theme = (['light', 'dark', 'daylight'] as const).find((name) => name === kept.theme) ?? 'device';
    const units = kept.units === 'metric' || kept.units === 'imperial' ? kept.units : null;
    return { theme, units };
  } catch {
    // Private windows may forbid it: then the choice lasts as long as the page.
    return { theme: 'device', units: null };
  }
}

const RESTING = {
  stage: 'survey',
  floor: null,
  tool: 'pick',
  toolState: null,
  settings: {},
  picked: [],
  pickedEdges: [],
  cameras: {},
  why: null,
  lit: null,
  notice: null,
  panel: null,
  truing: null,
  spot: null,
} as const satisfies Omit<Session, 'theme' | 'units'>;

export const useSession = create<Session>()(() => ({ ...RESTING, ...fromDevice() }));
export const session = useSession.getState;
const set = useSession.setState;

useSession.subscribe((now, was) => {
  if (now.theme === was.theme && now.units === was.units) return;
  try {
    localStorage.setItem(DEVICE_KEY, JSON.stringify({ theme: now.theme, units: now.units }));
  } catch {
    // See fromDevice.
  }
});

/** Everything of the last job is put down; theme and units stay with the device. */
export function restSession(): void {
  set({ ...RESTING });
}

export function goTo(stage: Stage): void {
  set({
    stage,
    tool: 'pick',
    toolState: null,
    picked: [],
    pickedEdges: [],
    why: null,
    lit: null,
    truing: null,
    spot: null,
  });
}

export function showFloor(floor: RecordId | null): void {
  set({ floor, picked: [], pickedEdges: [], toolState: null, why: null, lit: null, truing: null, spot: null });
}

/** Takes a tool in hand. The tool starts at rest. */
export function arm(tool: string): void {
  set((was) => ({
    tool,
    toolState: null,
    pickedEdges: [],
    ...(tool === 'pick' ? {} : { picked: [], ...withoutWhy(was) }),
  }));
}

export function setToolState(toolState: unknown): void {
  set({ toolState });
}

export function setSettings(tool: string, more: Settings): void {
  set((was) => ({ settings: { ...was.settings, [tool]: { ...was.settings[tool], ...more } } }));
}

export function pick(picked: readonly RecordId[], pickedEdges: readonly number[] = []): void {
  set((was) => ({ picked, pickedEdges, spot: null, ...(picked.length > 0 ? withoutWhy(was) : {}) }));
}

/** In Survey the Why dock stands where the sheet goes: a new pick or tool takes the place back. */
function withoutWhy({ stage }: Session): Partial<Session> {
  return stage === 'survey' ? { why: null, lit: null } : {};
}

export function setCamera(floor: string, camera: Camera): void {
  set((was) => ({ cameras: { ...was.cameras, [floor]: camera } }));
}

export function setTheme(theme: Theme): void {
  set({ theme });
}

export function setUnits(units: Units | null): void {
  set({ units });
}

/** Opens the Why dock on a takeoff line and lights its geometry; null closes it. */
export function askWhy(key: string | null): void {
  set({ why: key, lit: key });
}

export function light(key: string | null): void {
  set({ lit: key });
}

/** Asks why no machine works at a place of the plan; null lets go of it. */
export function askSpot(spot: Point | null): void {
  set({ spot });
}

export function say(text: string, doIt?: Notice['doIt']): void {
  set({ notice: doIt ? { text, doIt } : { text } });
}

export function hush(): void {
  set({ notice: null });
}

export function openPanel(panel: string | null): void {
  set({ panel });
}

export function trueThe(page: RecordId | null): void {
  set({ truing: page, tool: page ? 'true' : 'pick', toolState: null, picked: [], pickedEdges: [] });
}
