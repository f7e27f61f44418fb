import { add, multiply, number, subtract, term } from './formula.ts';
import type { Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { profileCheck, type CspRange } from './profile.ts';
import { PRACTICE } from './rates/rateRow.ts';
import { systemOf } from './rates/systems.ts';
import { textureCode } from './rates/texture.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, measured } from './terms.ts';

/** Systems thinner than this, mm, soak in or are none: nothing of them fills a texture. Common practice, no source. */
const FILM_MM = 0.1;

/** Mean texture depth of a sand patch, mm: t = 4 V / (pi D2), V in mL and D in mm (ASTM-E965). */
export function sandPatchMm(volumeMl: number, diameterMm: number): number {
  return (4 * volumeMl * 1000) / (Math.PI * diameterMm ** 2);
}

/**
 * What the layer of the topping needs besides: extra topping for the texture, L = m2 x mean texture depth (1 mm is
 * 1 L/m2), and the film itself where its thickness is set. Only where it is known what is laid. The extra is on top of
 * the film only if the thickness is asked for over the peaks. Depths: estimates, no published table was read.
 */
export function zoneTexture(site: Site, zone: ZoneWork): Line[] {
  const { prep, measure } = zone;
  const system = prep.record?.system ?? null;
  const row = system ? systemOf(system.kind) : null;
  const made = profileMade(zone);
  if (!system || !row || row.thicknessMm[1] < FILM_MM) return [];
  const base = {
    trade: 'material',
    unit: 'L',
    zone: prep.zone,
    records: prep.zone === 'rest' ? [] : [prep.zone],
  } as const;
  const floor = measured('net floor', measure.netM2, 'm2', `netFloor|${prep.zone}`);
  const thickness = system.thicknessMm ?? 0;
  const film =
    thickness > 0
      ? [
          makeLine({
            ...base,
            code: 'toppingFilm',
            formula: multiply(term('net floor'), term('thickness')),
            terms: [floor, chosen('thickness', thickness, 'mm', prep.record?.id ?? null)],
          }),
        ]
      : [];
  if (!made) return film;
  const depth = depthOf(site, made);
  return [
    ...film,
    makeLine({
      ...base,
      code: 'textureFill',
      formula: multiply(term('net floor'), depth.formula),
      terms: [floor, ...depth.terms],
    }),
  ];
}

/** Profile that the floor will have: what is asked for as far as the last pass gives it, else what is asked for. */
function profileMade({ prep }: ZoneWork): CspRange | null {
  const { required, field } = profileCheck(prep);
  if (!required || !field.gives) return required;
  const both = { min: Math.max(required.min, field.gives.min), max: Math.min(required.max, field.gives.max) };
  return both.min <= both.max ? both : required;
}

/** Begins the name of the term that says a texture depth; the CSP follows. */
export const TEXTURE_AT = 'texture at CSP ';
const SHARE = 'part of it at the rougher end';

/** Between the smoother and the rougher end of the range: all smooth in the low case, half likely, all rough in the high. */
function depthOf(site: Site, { min, max }: CspRange): Pick<Line['working'], 'formula' | 'terms'> {
  const [smooth, rough] = [Math.max(1, Math.floor(min)), Math.min(10, Math.ceil(max))];
  const name = (csp: number): string => `${TEXTURE_AT}${csp}`;
  const depth = (csp: number): Term => allowanceTerm(name(csp), site.book.rate(textureCode(csp)));
  if (smooth >= rough) return { formula: term(name(rough)), terms: [depth(rough)] };
  const share: Term = { name: SHARE, value: { low: 0, likely: 0.5, high: 1 }, unit: 'number', from: null, ...PRACTICE };
  return {
    formula: add(
      multiply(term(name(smooth)), subtract(number(1), term(SHARE))),
      multiply(term(name(rough)), term(SHARE)),
    ),
    terms: [depth(smooth), share, depth(rough)],
  };
}
