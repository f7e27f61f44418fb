import { findingsIn } from './findingLines.ts';
import { divide, multiply, number, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import type { Formula, Line, Term } from './line.ts';
import { coverings } from './rates/coverings.ts';
import { densityCode, thicknessCode } from './rates/coverThickness.ts';
import { findingRowOf } from './rates/findings.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, factorTerm, measured } from './terms.ts';
import { wasteWay, type WasteWay } from './wasteWays.ts';

/** A coating, adhesive or bed that comes off, kg. */
export interface RemovedCover {
  readonly id: Line['records'][number];
  readonly mass: Formula;
  /** Its own; the density may be shared with others. */
  readonly terms: readonly Term[];
  readonly density: Term;
}

/** Black mastic has no method of its own: once it is cleared it is scraped, like what it held down. */
function wayOf(kind: string): WasteWay {
  const row = methodOf(findingRowOf(kind)?.method ?? '');
  return row ? wasteWay(row) : 'rubble';
}

/**
 * What lies on the floor of a zone and leaves it one way: m2 x mm x kg/m3 / 1000. A thickness that nobody measured
 * comes from the book (common practice, no source). The density is a likely one: the thickness holds the spread.
 */
export function removedCovers(site: Site, zone: ZoneWork, way: WasteWay): readonly RemovedCover[] {
  const found = findingsIn(site, zone).filter(
    ({ finding }) => coverings.some((row) => row.id === finding.kind) && wayOf(finding.kind) === way,
  );
  const names = uniqueNames(found.map(({ finding }) => finding.tag));
  return found.map(({ finding, areaM2 }, i): RemovedCover => {
    const name = names[i] ?? finding.tag;
    const [area, thickness, layers] = [`${name} area`, `${name} thickness`, `${name} layers`];
    const many = finding.layers ?? 1;
    const code = densityCode(finding.kind);
    const density = factorTerm(code.endsWith('mineral') ? 'mortar beds' : 'coatings', site.book.rate(code));
    const product = multiply(term(area), term(thickness), ...(many > 1 ? [term(layers)] : []), term(density.name));
    return {
      id: finding.id,
      mass: divide(product, number(1000)),
      terms: [
        measured(area, areaM2, 'm2', finding.id),
        finding.thicknessMm === undefined
          ? allowanceTerm(thickness, site.book.rate(thicknessCode(finding.kind)))
          : chosen(thickness, finding.thicknessMm, 'mm', finding.id),
        ...(many > 1 ? [chosen(layers, many, 'number', finding.id)] : []),
      ],
      density,
    };
  });
}

/** Terms of covers with each density once. */
export function coverTerms(covers: readonly RemovedCover[]): Term[] {
  const densities = new Map(covers.map(({ density }) => [density.name, density]));
  return [...covers.flatMap(({ terms }) => terms), ...densities.values()];
}
