import type { ReactElement } from 'react';
import type { Settings } from '../session.ts';

/**
 * The fields of each kind of item, by slot. The sheet of a picked item and the entry bar of the tool that draws the
 * next one show the same fields: the sheet writes the plan, the bar writes what the next item starts with.
 */
export interface FieldsProps {
  readonly value: Settings;
  readonly onSet: (slots: Settings) => void;
  /** Labels before the boxes, choices as lists: the entry bar of the desk. */
  readonly inline?: boolean;
  /** What the next item starts with: only what is set before drawing. */
  readonly entry?: boolean;
}

export type Fields = (props: FieldsProps) => ReactElement;

export function mmOf(value: Settings[string]): number | null {
  return typeof value === 'number' ? value : null;
}

export function answerOf<T extends string>(value: Settings[string], words: Readonly<Record<T, string>>): T | null {
  return typeof value === 'string' && value in words ? (value as T) : null;
}
