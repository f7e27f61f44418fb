import type { ReactElement } from 'react';
import css from './RateBook.module.css';
import { lookUpRows, type LookUp, type LookUpRow } from './lookUpTables.ts';
import { inSentences } from './rateFigures.ts';
import { textInUnits } from '../../model/textInUnits.ts';
import { useUnits } from '../plan.ts';
import { lookUpText } from '../../words/lookUpWords.ts';
import { sourceSays } from '../../words/whyWords.ts';

interface LookUpTableProps {
  readonly table: LookUp;
  /** Words that are looked for, in small letters; empty: all rows. */
  readonly wanted: string;
}

/** Whether a row has the words that are looked for; all rows of a table that has them in its name. */
export function isWanted({ name, says, more }: LookUpRow, table: LookUp, wanted: string): boolean {
  return `${lookUpText.names[table]} ${name} ${says} ${more ?? ''}`.toLowerCase().includes(wanted);
}

/** Rows of a table that nothing is worked with: what it says, and who says so. */
export function LookUpTable({ table, wanted }: LookUpTableProps): ReactElement {
  const units = useUnits();
  return (
    <ul>
      {lookUpRows(table)
        .filter((row) => isWanted(row, table, wanted))
        .map((row) => (
          <li key={`${row.name} ${row.says} ${row.more ?? ''}`} className={css.lookUp}>
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
