import type { RecordId } from '../model/cell.ts';
import { corner } from '../geometry/ring.ts';
import type { Point } from '../geometry/floorShape.ts';
import { onFloor, type Held } from '../model/doc.ts';
import type { Upstand } from '../model/records/base.ts';
import { add, divide, multiply, number, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { metresAlong, metresOf, type FaceLine } from './faceMetres.ts';
import { keptOf } from './keptShapes.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured } from './terms.ts';

/** A run of upstand in one zone: along an edge of a slab, or round an obstruction. */
export interface UpstandRun {
  readonly record: RecordId;
  readonly name: string;
  readonly upstand: Upstand;
  readonly metres: number;
}

const withUpstand = keptOf((items: readonly Held<'obstruction'>[]) => items.filter((item) => item.upstand));

/** Upstands of a zone, wherever the floor at their foot is worked by machine or by hand; or along some faces only. */
export function upstandRuns(
  { doc, floor }: Pick<Site, 'doc' | 'floor'>,
  { measure }: Pick<ZoneWork, 'measure'>,
  keep: (line: FaceLine) => boolean = () => true,
): UpstandRun[] {
  const onEdges = onFloor(doc, 'slab', floor).flatMap((slab) => {
    const ring: Point[] = slab.outline.map(({ x, y }) => [x, y]);
    return slab.outline.flatMap(({ edge }, i) =>
      edge.upstand
        ? [
            {
              record: slab.id,
              name: `${slab.tag} edge ${i + 1}`,
              upstand: edge.upstand,
              metres: metresAlong(measure, slab.id, corner(ring, i), corner(ring, i + 1), keep),
            },
          ]
        : [],
    );
  });
  const onObstructions = withUpstand(onFloor(doc, 'obstruction', floor)).flatMap((item) =>
    item.upstand
      ? [{ record: item.id, name: item.tag, upstand: item.upstand, metres: metresOf(measure, item.id, keep) }]
      : [],
  );
  const runs = [...onEdges, ...onObstructions].filter((run) => run.metres > 0);
  const names = uniqueNames(runs.map((run) => run.name));
  return runs.map((run, i) => ({ ...run, name: names[i] ?? run.name }));
}

/** Metres and face area of upstands, by what becomes of them: kept, removed, prepared. */
export function upstandLines(site: Site): Line[] {
  return site.zones.flatMap((zone) => {
    const runs = upstandRuns(site, zone);
    const treats = [...new Set(runs.map((run) => run.upstand.treat))].toSorted();
    return treats.flatMap((treat) =>
      linesOf(
        treat,
        zone,
        runs.filter((run) => run.upstand.treat === treat),
      ),
    );
  });
}

function linesOf(treat: Upstand['treat'], { prep, held }: ZoneWork, runs: readonly UpstandRun[]): Line[] {
  const base = { trade: 'edge', zone: prep.zone, held, records: runs.map((run) => run.record) } as const;
  const lengths = runs.map((run) => measured(run.name, run.metres, 'm', run.record));
  const heights = runs.map((run) => measured(`${run.name} height`, run.upstand.heightMm, 'mm', run.record));
  const areas = runs.map((run) => divide(multiply(term(run.name), term(`${run.name} height`)), number(1000)));
  return [
    makeLine({
      ...base,
      code: `upstandMetres.${treat}`,
      unit: 'm',
      formula: sumOf(runs.map((run) => run.name)),
      terms: lengths,
    }),
    makeLine({
      ...base,
      code: `upstandArea.${treat}`,
      unit: 'm2',
      formula: add(...areas),
      terms: [...lengths, ...heights],
    }),
  ];
}
