import type { ReactElement } from 'react';
import css from './Sheet.module.css';
import { cx } from '../../look/cx.ts';
import type { Held } from '../../../model/doc.ts';
import { showLength } from '../../../model/showLength.ts';
import { Button } from '../../parts/Button.tsx';
import { MeasureField } from '../../parts/MeasureField.tsx';
import { DockSection } from '../../parts/Dock.tsx';
import { Row } from '../../parts/Row.tsx';
import { run, useUnits } from '../../plan.ts';
import { pick, useSession, type Settings } from '../../session.ts';
import { fieldWords, surveyText } from '../../../words/surveyWords.ts';
import { itemFields } from '../itemFields.tsx';
import { edgeLengthMm, edgeWordsOf } from '../itemLine.ts';

const { edgeKind: EdgeKindFields, upstand: UpstandFields } = itemFields;
const USUAL_UPSTAND = { kind: 'stemWall', heightMm: 150, treat: 'prepare' } as const;

function setEdges(slab: Held<'slab'>, edges: readonly number[], slots: Settings): void {
  const named = Object.fromEntries(Object.entries(slots).filter(([, value]) => value !== undefined));
  run('setEdge', { id: slab.id, edges: [...edges], ...named });
}

/** The fields open under a row, which may be the last in sight. */
function intoSight(fields: HTMLDivElement | null): void {
  fields?.scrollIntoView({ block: 'nearest' });
}

/** Length of one edge; kind, what lies beyond and the upstand of one or several edges of a slab. */
function EdgeFields({
  slab,
  edges,
}: {
  readonly slab: Held<'slab'>;
  readonly edges: readonly number[];
}): ReactElement | null {
  const first = slab.outline[edges[0] ?? -1]?.edge;
  if (!first || !EdgeKindFields || !UpstandFields) return null;
  const { kind, beyond, heightMm, upstand } = first;
  const one = edges.length === 1 ? edges[0] : undefined;
  const setUpstand = (slots: Settings): void => {
    run('setUpstand', { id: slab.id, edges: [...edges], upstand: { ...USUAL_UPSTAND, ...upstand, ...slots } });
  };
  return (
    <div className={css.fields} ref={intoSight}>
      {one !== undefined && (
        <MeasureField
          key={edgeLengthMm(slab, one)}
          label={fieldWords.length}
          mm={edgeLengthMm(slab, one)}
          rounded
          minMm={1}
          onSet={(lengthMm) => lengthMm !== null && run('setEdgeLength', { id: slab.id, edge: one, lengthMm })}
        />
      )}
      <EdgeKindFields
        value={{ kind, beyond, heightMm: heightMm ?? null }}
        onSet={(slots) => setEdges(slab, edges, slots)}
      />
      {upstand ? (
        <>
          <UpstandFields
            value={{ kind: upstand.kind, heightMm: upstand.heightMm, treat: upstand.treat }}
            onSet={setUpstand}
          />
          <Button size="desk" onClick={() => run('setUpstand', { id: slab.id, edges: [...edges], upstand: null })}>
            {surveyText.noUpstand}
          </Button>
        </>
      ) : (
        <Button size="desk" onClick={() => setUpstand({})}>
          {surveyText.addUpstand}
        </Button>
      )}
    </div>
  );
}

export function EdgesSection({ slab }: { readonly slab: Held<'slab'> }): ReactElement {
  const units = useUnits();
  const edges = useSession((now) => now.pickedEdges);
  const allWalls = slab.outline.every(({ edge }) => edge.kind === 'wall' && (edge.tag ?? '') === '');
  // Under the row that was picked last: an outline of forty edges would hide its fields below them all.
  const last = edges.at(-1);
  const toggle = (edge: number, shift: boolean): void => {
    const rest = shift ? edges.filter((one) => one !== edge) : [];
    pick([slab.id], edges.includes(edge) && (shift || edges.length === 1) ? rest : [...rest, edge]);
  };
  return (
    <DockSection title={surveyText.edgesOf} right={surveyText.corners(slab.outline.length)} className={cx(css.flush)}>
      {allWalls && <p className={css.next}>{surveyText.doorwaysNext}</p>}
      <ul className={css.list}>
        {slab.outline.map(({ edge }, index) => (
          // Edges have no name but their place.
          // oxlint-disable-next-line react/no-array-index-key
          <li key={index}>
            <Row
              tag={edge.tag ?? String(index + 1)}
              words={edgeWordsOf(edge)}
              more={edge.upstand ? fieldWords.upstand : undefined}
              figure={showLength(edgeLengthMm(slab, index), units)}
              picked={edges.includes(index)}
              onPick={(shift) => toggle(index, shift)}
            />
            {index === last && <EdgeFields key={edges.join()} slab={slab} edges={edges} />}
          </li>
        ))}
      </ul>
    </DockSection>
  );
}
