import { memo, useCallback, type ReactElement } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore.js';
import type { Painted } from '../paint/kept.ts';
import type { PaintClass, PaintedFloor } from '../paint/paintFloor.ts';
import { ClassShape } from './ClassShape.tsx';
import { drawPainted, type Drawing } from './drawPrims.ts';

interface PaintedClassProps {
  readonly name: PaintClass;
  readonly works: readonly Painted[];
  readonly drawing: Omit<Drawing, 'context'>;
}

const PaintedClass = memo(function PaintedClass({ name, works, drawing }: PaintedClassProps): ReactElement {
  const draw = useCallback((lent: Drawing) => drawPainted(lent, works), [works]);
  return <ClassShape name={name} drawing={drawing} draw={draw} />;
});

interface PaintedLayerProps {
  readonly classes: readonly PaintClass[];
  readonly floor: PaintedFloor;
  readonly drawing: Omit<Drawing, 'context'>;
  readonly above?: ReactElement;
}

/** A konva layer with its classes of items, bottom to top. */
export function PaintedLayer({ classes, floor, drawing, above }: PaintedLayerProps): ReactElement {
  return (
    <Layer listening={false}>
      {classes.map((name) => (
        <PaintedClass key={name} name={name} works={floor[name]} drawing={drawing} />
      ))}
      {above}
    </Layer>
  );
}
