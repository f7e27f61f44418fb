import type { ReactElement } from 'react';
import css from './TopBar.module.css';
import { cx } from '../look/cx.ts';
import { Icon } from '../parts/Icon.tsx';
import { redo, undo, useOpen, useSteps } from '../plan.ts';
import { commandLabels } from '../../words/handWords.ts';
import { ui } from '../../words/uiWords.ts';

/** Undo and redo name what they would take back; with nothing to take they are dashed in meaning, not gone. */
export function StepButton({ which, bare }: { readonly which: 'undo' | 'redo'; readonly bare: boolean }): ReactElement {
  const label = useSteps()[which];
  const readOnly = useOpen()?.readOnly ?? null;
  const off = label === null || readOnly !== null;
  const what = label === null ? ui[which] : ui[`${which}What`](commandLabels[label] ?? label);
  return (
    <button
      type="button"
      className={cx(css.button, off && css.off)}
      aria-disabled={off ? true : undefined}
      aria-label={what}
      title={what}
      onClick={which === 'undo' ? undo : redo}
    >
      <Icon name={which} />
      {!bare && <span>{ui[which]}</span>}
    </button>
  );
}
