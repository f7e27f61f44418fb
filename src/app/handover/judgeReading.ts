import type { ReadingRow } from '../../takeoff/rates/surveyReadings.ts';

/** Whether a value lies within the limit of its row; null where the row has none that a number can be held against. */
export function judgeReading(row: ReadingRow, value: number | null): boolean | null {
  if (value === null) return null;
  if (row.limitKind === 'range') {
    const [low, high] = row.limit.split('-').map(Number);
    return low === undefined || high === undefined ? null : value >= low && value <= high;
  }
  const limit = Number(row.limit);
  if (row.limit === '' || Number.isNaN(limit)) return null;
  if (row.limitKind === 'max') return value <= limit;
  if (row.limitKind === 'min') return value >= limit;
  return null;
}

const before: Readonly<Record<string, string>> = { max: 'at most', min: 'at least', range: 'from', equals: '' };

/** The limit as a phrase, "at most 75 %"; empty where there is none. */
export function limitText(row: ReadingRow): string {
  if (row.limit === '') return '';
  const unit = row.limitKind === 'equals' ? '' : row.unit;
  const figures = row.limitKind === 'range' ? row.limit.replace('-', ' to ') : row.limit;
  return [before[row.limitKind] ?? '', figures, unit].filter((part) => part !== '').join(' ');
}
