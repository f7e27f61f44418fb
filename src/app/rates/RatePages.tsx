import type { ReactElement, RefObject } from 'react';
import css from './RateBook.module.css';
import { isWanted, LookUpTable } from './LookUpTable.tsx';
import { LOOK_UPS, lookUpNotes, lookUpRows, type LookUp } from './lookUpTables.ts';
import { machineRates, type MachineRate } from './machineRates.ts';
import { RateLine } from './RateLine.tsx';
import { RATE_TABLES, tableOf, type RateTable } from './rateTables.ts';
import type { Page } from './RateTablesList.tsx';
import { useRateUses } from './useRateUses.ts';
import { useDoc, useUnits } from '../plan.ts';
import { textInUnits } from '../../model/textInUnits.ts';
import { machineOfCode } from '../../takeoff/rates/machineRate.ts';
import { rateBook } from '../../takeoff/rates/rateBook.ts';
import { lookUpText } from '../../words/lookUpWords.ts';
import { rateBookText as text } from '../../words/rateWords.ts';

interface RatePagesProps {
  readonly page: Page;
  /** Words that are looked for in all tables, in small letters; empty: the page alone. */
  readonly wanted: string;
  readonly changing: string | null;
  readonly onChange: (code: string) => void;
  readonly onDone: () => void;
  readonly onReset: (code: string) => void;
  readonly keepRef: RefObject<(() => boolean) | null>;
}

/** The rows of a page, or of every page that has the words that are looked for. */
export function RatePages({ page, wanted, ...of }: RatePagesProps): ReactElement {
  const units = useUnits();
  const rates = useDoc((doc): readonly MachineRate[] => [
    ...machineRates(doc),
    ...rateBook(doc)
      .rates.filter(({ code }) => machineOfCode(code) === null)
      .map((rate) => ({ rate, method: null })),
  ]);
  const isFound = ({ rate }: MachineRate): boolean =>
    `${text.names[tableOf(rate)]} ${textInUnits(rate.term, units)}`.toLowerCase().includes(wanted);
  const open = (each: Page): boolean => wanted !== '' || each === page;
  const rateTables = RATE_TABLES.filter(open).map((table) => ({
    table,
    rows: rates.filter((each) => tableOf(each.rate) === table && isFound(each)),
  }));
  const shown = rateTables.filter(({ table, rows }) => rows.length > 0 || table === page);
  const lookUps = LOOK_UPS.filter((table) => open(`lookUp/${table}`)).filter((table) =>
    lookUpRows(table).some((row) => isWanted(row, table, wanted)),
  );
  if (wanted !== '' && shown.every(({ rows }) => rows.length === 0) && lookUps.length === 0) return <p>{text.none}</p>;
  return (
    <>
      {shown.map(({ table, rows }) => (
        <RateSection key={table} table={table} rows={rows} empty={wanted === ''} {...of} />
      ))}
      {lookUps.map((table) => (
        <LookUpSection key={table} table={table} wanted={wanted} />
      ))}
    </>
  );
}

type RateSectionProps = Omit<RatePagesProps, 'page' | 'wanted'> & {
  readonly table: RateTable;
  readonly rows: readonly MachineRate[];
  /** Says what is missing when there are no rows. */
  readonly empty: boolean;
};

function RateSection({
  table,
  rows,
  empty,
  changing,
  onChange,
  onDone,
  onReset,
  keepRef,
}: RateSectionProps): ReactElement | null {
  const useOf = useRateUses();
  if (rows.length === 0 && !empty) return null;
  return (
    <section aria-label={text.names[table]} className={css.page}>
      <h3>{text.names[table]}</h3>
      {table === 'machine' && rows.length === 0 && <p>{text.noMachines}</p>}
      <ul>
        {rows.map(({ rate, method }) => (
          <RateLine
            key={rate.code}
            rate={rate}
            method={method}
            use={useOf(rate)}
            changing={changing === rate.code}
            onChange={(open) => (open ? onChange(rate.code) : onDone())}
            onReset={() => onReset(rate.code)}
            keepRef={keepRef}
          />
        ))}
      </ul>
    </section>
  );
}

function LookUpSection({ table, wanted }: { readonly table: LookUp; readonly wanted: string }): ReactElement {
  const notes = lookUpNotes(table);
  return (
    <section aria-label={lookUpText.names[table]} className={css.page}>
      <h3>{lookUpText.names[table]}</h3>
      {wanted === '' && <p className={css.note}>{text.readOnly}</p>}
      {wanted === '' && notes.length > 0 && (
        <ul className={css.notes}>
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <LookUpTable table={table} wanted={wanted} />
    </section>
  );
}
