import type { ToolEnv } from './tool.ts';

/** What the entry bar holds, by slot; the fallback where it holds nothing of that kind. */
export function numberSetting(env: ToolEnv, slot: string, otherwise: number): number {
  const value = env.settings[slot];
  return typeof value === 'number' && Number.isFinite(value) ? value : otherwise;
}

export function numberOrNull(env: ToolEnv, slot: string): number | null {
  const value = env.settings[slot];
  return typeof value === 'number' && Number.isFinite(value) ? value : null;
}

/** A word out of a list: the first one where the entry bar holds none of them. */
export function choiceSetting<const W extends string>(env: ToolEnv, slot: string, words: readonly [W, ...W[]]): W {
  const value = env.settings[slot];
  return words.find((word) => word === value) ?? words[0];
}

export function textSetting(env: ToolEnv, slot: string, otherwise: string): string {
  const value = env.settings[slot];
  return typeof value === 'string' ? value : otherwise;
}

/** `{slot: value}` when the entry bar holds a number above zero, else nothing: for slots that may be missing. */
export function optionalNumber<const K extends string>(env: ToolEnv, slot: K): { readonly [key in K]?: number } {
  const value = numberOrNull(env, slot);
  return value !== null && value > 0 ? ({ [slot]: value } as { readonly [key in K]?: number }) : {};
}
