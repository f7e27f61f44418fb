import type { ReactElement } from 'react';
import css from './RateBook.module.css';
import { LOOK_UPS, type LookUp } from './lookUpTables.ts';
import { TABLE_GROUPS, type RateTable } from './rateTables.ts';
import { useLayout } from '../look/useLayout.ts';
import { Picker } from '../parts/Picker.tsx';
import { lookUpText } from '../../words/lookUpWords.ts';
import { rateBookText as text } from '../../words/rateWords.ts';

/** A page of the book: a table of rates, or one to look up. */
export type Page = RateTable | `lookUp/${LookUp}`;

interface RateTablesListProps {
  readonly page: Page;
  /** Rows of all tables are shown that hold a word: none of them is the page. */
  readonly finding: boolean;
  readonly onPage: (page: Page) => void;
  /** How many rates of a table are not the book's. */
  readonly changed: ReadonlyMap<RateTable, number>;
}

interface Entry {
  readonly value: Page;
  readonly words: string;
  readonly count: number;
}

function groupsOf(changed: ReadonlyMap<RateTable, number>): readonly (readonly [string, readonly Entry[]])[] {
  const rates = (['speed', 'changes', 'used'] as const).map((group) => {
    const entries = TABLE_GROUPS[group].map((table) => ({
      value: table,
      words: text.names[table],
      count: changed.get(table) ?? 0,
    }));
    return [text.groups[group], entries] as const;
  });
  const lookUps = LOOK_UPS.map((table) => ({
    value: `lookUp/${table}` as const,
    words: lookUpText.names[table],
    count: 0,
  }));
  return [...rates, [text.groups.lookUp, lookUps]];
}

/** The tables of the book: a list beside the rows, on a phone one field above them. */
export function RateTablesList({ page, finding, onPage, changed }: RateTablesListProps): ReactElement {
  const layout = useLayout();
  const groups = groupsOf(changed);
  if (layout === 'phone') {
    const options = groups.map(([title, entries]) => ({
      title,
      options: entries.map(({ value, words, count }) => ({
        value,
        words,
        ...(count > 0 ? { more: text.changedRows(count) } : {}),
      })),
    }));
    return <Picker label={text.table} value={page} groups={options} onPick={onPage} />;
  }
  return (
    <nav className={css.tables} aria-label={text.tables}>
      {groups.map(([title, entries]) => (
        <section key={title} aria-label={title}>
          <h3>{title}</h3>
          <ul>
            {entries.map(({ value, words, count }) => (
              <li key={value}>
                <button
                  type="button"
                  className={css.table}
                  aria-current={value === page && !finding ? 'page' : undefined}
                  onClick={() => onPage(value)}
                >
                  <span>{words}</span>
                  {count > 0 && (
                    <>
                      <span className={css.count} aria-hidden="true">
                        {count}
                      </span>
                      <span className="forReaders">{text.changedRows(count)}</span>
                    </>
                  )}
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </nav>
  );
}
