import type { Draft } from './tool.ts';

/** A draft with nothing in it but what is named. */
export function draftOf(parts: Partial<Draft> & { readonly hint: string }): Draft {
  return { cells: [], prims: [], cursor: 'crosshair', live: null, from: null, moving: [], ...parts };
}
