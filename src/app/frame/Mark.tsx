import type { ReactElement } from 'react';

/** A block of slab with a toothed top, and the tooth it is given, in chalk. */
export function Mark({ width = 28 }: { readonly width?: number }): ReactElement {
  return (
    <svg width={width} height={width * 0.8} viewBox="0 0 30 24" aria-hidden="true">
      <path d="M0 24V13l3-4 3 4 3-4 3 4 3-4 3 4 3-4 3 4 3-4 3 4v11z" fill="var(--ink)" />
      <path d="M0 7l3-4 3 4 3-4 3 4 3-4 3 4 3-4 3 4 3-4 3 4" fill="none" stroke="var(--chalk)" strokeWidth="3" />
    </svg>
  );
}
