import { useCallback, type ReactElement } from 'react';
import type Konva from 'konva/lib/Core.js';
import { Shape } from 'react-konva/lib/ReactKonvaCore.js';
import type { Drawing } from './drawPrims.ts';

interface ClassShapeProps {
  readonly name: string;
  /** Without the context, which konva lends for the time of drawing. */
  readonly drawing: Omit<Drawing, 'context'>;
  readonly draw: (drawing: Drawing) => void;
}

/** One konva shape for a whole class of items: it draws prims itself, and konva keeps no node for each. */
export function ClassShape({ name, drawing, draw }: ClassShapeProps): ReactElement {
  const sceneFunc = useCallback((lent: Konva.Context) => draw({ ...drawing, context: lent._context }), [drawing, draw]);
  return <Shape name={name} sceneFunc={sceneFunc} listening={false} perfectDrawEnabled={false} />;
}
