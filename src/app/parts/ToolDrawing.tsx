import type { ReactElement } from 'react';
import css from './Icon.module.css';
import { cx } from '../look/cx.ts';
import { toolDrawings, type ToolDrawingName } from '../../canvas/paint/toolDrawings.ts';

/** The drawing of a tool or a group of tools, beside its word. */
export function ToolDrawing({
  of,
  large = false,
}: {
  readonly of: ToolDrawingName;
  readonly large?: boolean;
}): ReactElement {
  return (
    <svg className={cx(css.tool, large && css.large)} viewBox="0 0 28 28" aria-hidden="true">
      {toolDrawings[of].map((stroke) => (
        <path
          key={stroke.d}
          d={stroke.d}
          fill={stroke.filled ? 'currentColor' : 'none'}
          stroke={stroke.filled ? 'none' : 'currentColor'}
          strokeWidth={stroke.width ?? 2}
          opacity={stroke.opacity ?? 1}
          strokeDasharray={stroke.dash}
        />
      ))}
    </svg>
  );
}
