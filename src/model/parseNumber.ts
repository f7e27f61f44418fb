/**
 * Reading a number as people write it: `1234.5`, `1,234.5`, `1.234,5`, `3,81`, `.5`, `1 234`.
 * One comma with exactly three figures behind it (`1,234`) can be read two ways and is refused: a slab must not
 * become a thousand times larger because of a guess.
 */
export type NumberFault = 'empty' | 'notANumber' | 'negative' | 'ambiguousComma';
export type ParsedNumber =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly fault: NumberFault; readonly what: string };

function fail(fault: NumberFault, what: string): ParsedNumber {
  return { ok: false, fault, what };
}

/** Digits with a decimal point, from digits with commas, points or both; null when the marks make no number. */
function plainDigits(text: string): string | null {
  if (!/^[\d.,]+$/.test(text) || !/\d/.test(text)) return null;
  const commas = text.split(',').length - 1;
  const points = text.split('.').length - 1;
  if (commas === 0 && points <= 1) return text;
  if (commas > 0 && points > 0) {
    // The mark that stands last is the decimal one; the other must group by threes.
    const decimal = text.lastIndexOf(',') > text.lastIndexOf('.') ? ',' : '.';
    const grouping = decimal === ',' ? '.' : ',';
    const [whole = '', fraction = '', more] = text.split(decimal);
    if (more !== undefined || !groupsByThree(whole, grouping)) return null;
    return `${whole.replaceAll(grouping, '')}.${fraction}`;
  }
  if (commas > 1) return groupsByThree(text, ',') ? text.replaceAll(',', '') : null;
  if (points > 1) return groupsByThree(text, '.') ? text.replaceAll('.', '') : null;
  return text.replace(',', '.');
}

function groupsByThree(text: string, mark: string): boolean {
  const [first = '', ...rest] = text.split(mark);
  return /^\d{1,3}$/.test(first) && rest.length > 0 && rest.every((group) => /^\d{3}$/.test(group));
}

/** A run of figures and marks without spaces or signs. */
export function parseFigures(text: string): ParsedNumber {
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) return fail('ambiguousComma', text);
  const digits = plainDigits(text);
  const value = digits === null ? Number.NaN : Number(digits);
  return Number.isFinite(value) ? { ok: true, value } : fail('notANumber', text);
}

/** A whole field: a percentage, a count, hours, an amount. Negative numbers only where they are allowed. */
export function parseNumber(typed: string, allow: { readonly negative?: boolean } = {}): ParsedNumber {
  const text = typed
    .replaceAll(/[\u00a0\u2009\u202f\s]+/g, ' ')
    .trim()
    .replace('\u2212', '-');
  if (text === '') return fail('empty', '');
  const minus = text.startsWith('-');
  if (minus && !allow.negative) return fail('negative', text);
  const body = text.replace(/^[+-] ?/, '');
  const ungrouped = /^\d{1,3}( \d{3})+([.,]\d+)?$/.test(body) ? body.replaceAll(' ', '') : body;
  const parsed = parseFigures(ungrouped);
  if (!parsed.ok) return parsed.fault === 'notANumber' ? fail('notANumber', text) : parsed;
  return minus ? { ok: true, value: parsed.value === 0 ? 0 : -parsed.value } : parsed;
}
