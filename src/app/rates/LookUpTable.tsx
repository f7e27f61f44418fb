import type { ReactElement } from 'react';
import css from './RateBook.module.css';
import { lookUpRows, type LookUp, type LookUpRow } from './lookUpTables.ts';
import { inSentences } from './rateFigures.ts';
import { textInUnits } from '../../model/textInUnits.ts';
import { useUnits } from '../plan.ts';
import { sourceSays } from '../../words/whyWords.ts';

interface LookUpTableProps {
  readonly table: LookUp;
  /** Words that are looked for, in small letters; empty: all rows. */
  readonly wanted: string;
}

export function isWanted({ name, says, more }: LookUpRow, wanted: string): boolean {
  return wanted === '' || `${name} ${says} ${more ?? ''}`.toLowerCase().includes(wanted);
}

/** Rows of a table that nothing is worked with: what it says, and who says so. */
export function LookUpTable({ table, wanted }: LookUpTableProps): ReactElement {
  const units = useUnits();
  return (
    <ul>
      {lookUpRows(table)
        .filter((row) => isWanted(row, wanted))
        .map((row) => (
          <li key={`${row.name} ${row.says}`} className={css.lookUp}>
            <b>{inSentences(textInUnits(row.name, units))}</b>
            <span>{inSentences(textInUnits(row.says, units))}</span>
            <small>
              {inSentences(textInUnits(row.more ?? '', units), sourceSays(row.source, row.provenance, row.fromMemory))}
            </small>
          </li>
        ))}
    </ul>
  );
}
