const EURO = new Set('AT BE CY DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK'.split(' '));
const OWN: Readonly<Record<string, string>> = { GB: 'GBP', CA: 'CAD', AU: 'AUD', NZ: 'NZD', CH: 'CHF' };

/**
 * The currency that people mostly price in where the device's language comes from (ISO 4217 codes by ISO 3166 region;
 * those whose cents the sample prices fit). US dollars where that is not known; every job can change it.
 */
export function usualCurrency(language: string): string {
  const region = /-([A-Z]{2})\b/.exec(language)?.[1] ?? '';
  return EURO.has(region) ? 'EUR' : (OWN[region] ?? 'USD');
}
