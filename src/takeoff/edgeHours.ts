import { EDGE_KINDS, edgeCode, type EdgeKind } from './edgeLines.ts';
import { edgePieceHours, metresByNumber } from './edgePieceHours.ts';
import { add, divide, multiply, number, sumOf, term, wholeUp } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { hardEdges, type HardEdge } from './hardEdges.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine, type LineParts } from './makeLine.ts';
import { edgeMachine, type PlannedPass } from './prep.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { laidInto, slowFindings } from './slowFindings.ts';
import { chosen, exact, factorTerm, measured, rateTerm } from './terms.ts';

/**
 * Hand hours at the edge, by linear metre at the face: metres x passes across x edge passes / rate, then corners,
 * posts and drains by number, stop lines and their grooves. A post or drain that is priced by number is not priced by
 * metre as well; one so long that its metres take more time is priced by the metre. Under a cove that stays and in a pit
 * the slower rate holds. What slows the machine slows the edge on its share of the strip.
 */
export function edgeHours(site: Site, zone: ZoneWork): Line[] {
  const hard = hardEdges(site, zone);
  return [
    ...zone.prep.passes.flatMap((pass, i) => edgeOfPass(site, zone, { pass, index: i, hard })),
    ...edgePieceHours(site, zone),
  ].filter((line) => line.quantity.high > 0);
}

interface EdgePass {
  readonly pass: PlannedPass;
  readonly index: number;
  readonly hard: readonly HardEdge[];
}

function edgeOfPass(site: Site, zone: ZoneWork, { pass, index, hard }: EdgePass): Line[] {
  const row = pass.edgeMethod === null ? null : methodOf(pass.edgeMethod);
  if (!row || pass.edgeTimes === 0) return [];
  const { prep, measure } = zone;
  const base = {
    trade: 'hours',
    unit: 'h',
    zone: prep.zone,
    of: pass.record ?? `pass-${index + 1}`,
    records: prep.zone === 'rest' ? [] : [prep.zone],
  } as const;
  const times = chosen('edge passes', pass.edgeTimes, 'number', pass.record);
  const strip = measured('strip', measure.stripM2, 'm2', `strip|${prep.zone}`);
  const [slow = []] = laidInto(site, slowFindings(site, zone), (finding) => finding.stripM2, [measure.stripM2]);
  if (row.group !== 'handGrind') {
    // Peening, needles and other tools have a rate by area: the strip is theirs.
    const area = add(term('strip'), ...slow.map((each) => each.extra));
    return [
      makeLine({
        ...base,
        code: 'hours.edge',
        formula: divide(multiply(area, term('edge passes')), term('rate')),
        terms: [
          strip,
          ...slow.flatMap((each) => each.terms),
          times,
          rateTerm('rate', site.book.rate(`methods/${row.id}`)),
        ],
      }),
    ];
  }
  const cup = row.cutWidthMm ?? 125;
  const kinds = EDGE_KINDS.map((kind) => edgeOfKind(site, zone, kind, { cupMm: cup, hard }));
  // A patch in the strip is so many metres of it: its area / the width of the strip along walls.
  const inMetres = stripWidth(zone, 'wall', cup).value.likely > 0 ? slow : [];
  const slower = inMetres.map((each) =>
    sideBySide(divide(multiply(each.extra, number(1000)), term('wall strip')), 'wall'),
  );
  const widths = [exact('cup', cup, 'mm'), factorTerm('useful width', site.book.rate('factors/overlap/grinder'))];
  return [
    makeLine({
      ...base,
      code: 'hours.edge',
      formula: divide(
        multiply(add(...kinds.map((kind) => kind.formula), ...slower), term('edge passes')),
        term('rate'),
      ),
      terms: [
        ...kinds.flatMap((kind) => kind.terms),
        ...widths,
        times,
        ...inMetres.flatMap((each) => each.terms),
        rateTerm('rate', site.book.rate('labour/edge_hand')),
      ],
    }),
    ...underCove(site, zone, hard, { ...base, code: 'hours.edgeCove' }, { cupMm: cup, shared: [times, ...widths] }),
  ];
}

/** Under a cove that stays, and along the inside of a pit that is worked by hand. */
function underCove(
  site: Site,
  zone: ZoneWork,
  hard: readonly HardEdge[],
  base: Omit<LineParts, 'formula' | 'terms'>,
  { cupMm, shared }: { readonly cupMm: number; readonly shared: readonly Term[] },
): Line[] {
  if (hard.length === 0) return [];
  const names = uniqueNames(hard.map((run) => run.name));
  const across = EDGE_KINDS.map((kind) => {
    const ofKind = names.filter((_, i) => hard[i]?.kind === kind);
    return { kind, ofKind };
  }).filter(({ ofKind }) => ofKind.length > 0);
  return [
    makeLine({
      ...base,
      records: hard.map((run) => run.record),
      formula: divide(
        multiply(add(...across.map(({ kind, ofKind }) => sideBySide(sumOf(ofKind), kind))), term('edge passes')),
        term('rate'),
      ),
      terms: [
        ...hard.map((run, i) => measured(names[i] ?? run.name, run.metres, 'm', run.record)),
        ...across.map(({ kind }) => stripWidth(zone, kind, cupMm)),
        ...shared,
        rateTerm('rate', site.book.rate('labour/edge_cove')),
      ],
    }),
  ];
}

/** Metres times the passes that lie side by side in the strip of their kind of face. */
function sideBySide(metres: Formula, kind: EdgeKind): Formula {
  return multiply(metres, wholeUp(divide(term(`${kind} strip`), multiply(term('cup'), term('useful width')))));
}

/** Width of the strip along a kind of face, mm: as the last machine leaves it, or one cup where there is none. */
function stripWidth({ prep }: ZoneWork, kind: EdgeKind, cupMm: number): Term {
  const machine = edgeMachine(prep);
  const widthMm = machine ? machine.clearanceMm[kind] + machine.lapMm : cupMm;
  return chosen(`${kind} strip`, widthMm, 'mm', machine?.id ?? null);
}

/** Metres of one kind of face, times the passes that lie side by side in its strip. */
function edgeOfKind(
  site: Site,
  zone: ZoneWork,
  kind: EdgeKind,
  { cupMm, hard }: { readonly cupMm: number; readonly hard: readonly HardEdge[] },
): { readonly formula: Formula; readonly terms: readonly Term[] } {
  const apart = hard.reduce((sum, run) => sum + (run.beside && run.kind === kind ? run.metres : 0), 0);
  const metres = zone.measure.faces[kind] - apart - (kind === 'obstruction' ? metresByNumber(site, zone) : 0);
  return {
    formula: sideBySide(term(kind), kind),
    terms: [
      measured(kind, Math.max(0, metres), 'm', `${edgeCode(kind)}|${zone.prep.zone}`),
      stripWidth(zone, kind, cupMm),
    ],
  };
}
