import { readFileSync } from 'node:fs';
import Papa from 'papaparse';

/** Rows of a table in tests/data/trade, by the names of its columns; `-` is an empty cell. */
export function csvTable(name: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../data/trade/${name}.csv`, import.meta.url), 'utf8').trim();
  const { data, errors } = Papa.parse<Record<string, string>>(text, { header: true });
  if (errors.length > 0) throw new Error(`${name}: ${errors[0]?.message}`);
  return data.map((row) =>
    Object.fromEntries(Object.entries(row).map(([key, cell]) => [key, cell === '-' ? '' : cell])),
  );
}

/** A JSON table in tests/data/trade. */
export function jsonTable(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../data/trade/${name}.json`, import.meta.url), 'utf8'));
}
