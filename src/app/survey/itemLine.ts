import { typeOf, type RecordId } from '../../model/cell.ts';
import { recordOf, type Doc, type Held } from '../../model/doc.ts';
import { showFineSize, showLength } from '../../model/showLength.ts';
import { figureText, showArea, type Figure } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { pathLength } from '../../geometry/polyline.ts';
import { ringArea } from '../../geometry/ring.ts';
import { itemShape } from '../../edit/itemShape.ts';
import { edgeWords, findingWords, itemWords, optionWords, readingWords, restWords } from '../../words/surveyWords.ts';

/** How an item reads in a list: its tag, what it is, and its size. */
export interface ItemLine {
  readonly id: RecordId;
  /** An edge of a slab that is listed by itself: a doorway. */
  readonly edge: number | null;
  readonly tag: string;
  readonly words: string;
  readonly figure: Figure | null;
}

const MM2_PER_M2 = 1_000_000;

/** Plan area or run of any item that has one. */
export function itemSize(doc: Doc, id: RecordId): { readonly areaM2: number } | { readonly lengthMm: number } | null {
  const circle = recordOf(doc, 'obstruction', id)?.shape;
  if (circle?.form === 'circle') return { areaM2: (Math.PI * circle.diameterMm ** 2) / 4 / MM2_PER_M2 };
  const shape = itemShape(doc, id);
  if (!shape || shape.points.length < 2) return null;
  if (shape.closed) return { areaM2: ringArea(shape.points) / MM2_PER_M2 };
  return { lengthMm: pathLength(shape.points) };
}

export function sizeFigure(doc: Doc, id: RecordId, units: Units): Figure | null {
  const size = itemSize(doc, id);
  if (!size) return null;
  return 'areaM2' in size ? showArea(size.areaM2, units) : showLength(size.lengthMm, units);
}

function bare(mm: number, units: Units): string {
  return showLength(mm, units).figure;
}

function obstructionWords({ kind, shape }: Held<'obstruction'>, units: Units): string {
  const words = optionWords.obstructionKind[kind];
  if (shape.form === 'circle') return `${words} ${bare(shape.diameterMm, units)} round`;
  if (shape.form === 'polygon') return words;
  if (shape.widthMm === shape.depthMm) return `${words} ${bare(shape.widthMm, units)} square`;
  return `${words} ${bare(shape.widthMm, units)} x ${bare(shape.depthMm, units)}`;
}

function crackWords({ widthMm, behaviour }: Held<'crack'>, units: Units): string {
  const how = optionWords.behaviour[behaviour].toLowerCase();
  const wide = widthMm === null ? '' : ` ${figureText(showFineSize(widthMm, units))}`;
  return `Crack${wide}, ${how}`;
}

/** What an item is, in words; a name that somebody gave it wins. */
export function wordsOf(doc: Doc, id: RecordId, units: Units): string {
  const name = doc.get(id)?.['name'];
  if (typeof name === 'string' && name !== '') return name;
  const wall = recordOf(doc, 'wall', id);
  if (wall) return `Wall ${bare(wall.thicknessMm, units)} thick`;
  const opening = recordOf(doc, 'opening', id);
  if (opening) return `Opening ${bare(opening.widthMm, units)} x ${bare(opening.heightMm, units)}`;
  const obstruction = recordOf(doc, 'obstruction', id);
  if (obstruction) return obstructionWords(obstruction, units);
  const crack = recordOf(doc, 'crack', id);
  if (crack) return crackWords(crack, units);
  const joint = recordOf(doc, 'joint', id);
  if (joint) return `${optionWords.jointKind[joint.kind]} joint`;
  const finding = recordOf(doc, 'finding', id);
  if (finding) return findingWords[finding.kind] ?? finding.kind;
  const reading = recordOf(doc, 'reading', id);
  if (reading) return readingWords[reading.kind]?.words ?? reading.kind;
  const note = recordOf(doc, 'note', id);
  if (note) return note.text;
  if (recordOf(doc, 'zone', id)?.covers === 'rest') return restWords;
  const type = typeOf(id) as keyof typeof itemWords;
  return itemWords[type] ?? type;
}

function figureOf(doc: Doc, id: RecordId, units: Units): Figure | null {
  const reading = recordOf(doc, 'reading', id);
  if (reading) return reading.value === null ? null : { figure: String(reading.value), unit: reading.unit };
  const entrance = recordOf(doc, 'entrance', id);
  if (entrance) return entrance.widthMm === null ? null : showLength(entrance.widthMm, units);
  return sizeFigure(doc, id, units);
}

export function itemLine(doc: Doc, id: RecordId, units: Units): ItemLine {
  const tag = doc.get(id)?.['tag'];
  return {
    id,
    edge: null,
    tag: typeof tag === 'string' ? tag : '',
    words: wordsOf(doc, id, units),
    figure: figureOf(doc, id, units),
  };
}

type Edge = Held<'slab'>['outline'][number]['edge'];

export function edgeWordsOf(edge: Edge): string {
  if (edge.kind === 'wall' || edge.kind === 'drop') return edgeWords[edge.kind] ?? edge.kind;
  const beyond = edge.beyond ?? (edge.kind === 'open' ? 'run' : 'stop');
  return edgeWords[edge.kind + (beyond === 'run' ? 'Run' : 'Stop')] ?? edge.kind;
}

export function edgeLengthMm(slab: Held<'slab'>, edge: number): number {
  const from = slab.outline[edge];
  const to = slab.outline[(edge + 1) % slab.outline.length];
  if (!from || !to) return 0;
  const path: readonly Point[] = [
    [from.x, from.y],
    [to.x, to.y],
  ];
  return pathLength(path);
}

/** Doorways of a slab have tags and stand in the list like any opening. */
export function doorwayLines(slab: Held<'slab'>, units: Units): readonly ItemLine[] {
  return slab.outline.flatMap(({ edge }, index): ItemLine[] =>
    edge.kind === 'doorway'
      ? [
          {
            id: slab.id,
            edge: index,
            tag: edge.tag ?? '',
            words: edgeWordsOf(edge),
            figure: showLength(edgeLengthMm(slab, index), units),
          },
        ]
      : [],
  );
}
