import type { ReactElement } from 'react';
import css from './Pictogram.module.css';
import { cx } from '../look/cx.ts';
import { pictograms, type PictogramName } from '../../canvas/paint/pictograms.ts';

interface PictogramProps {
  readonly name: PictogramName;
  /** 64 px in heads, 48 in rows. */
  readonly head?: boolean;
  /** On an ink bar: the plate gets an edge. */
  readonly onInk?: boolean;
}

/** A caution's drawing on an ink plate. Never alone: the words stand beside it. */
export function Pictogram({ name, head = false, onInk = false }: PictogramProps): ReactElement {
  return (
    <svg className={cx(css.plate, head && css.head, onInk && css.onInk)} viewBox="0 0 48 48" aria-hidden="true">
      {pictograms[name].map((path) => (
        <path key={path} d={path} />
      ))}
    </svg>
  );
}
