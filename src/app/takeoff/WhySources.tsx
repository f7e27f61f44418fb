import type { ReactElement } from 'react';
import css from './WhyDock.module.css';
import { showQuantity } from './showQuantity.ts';
import { useNames } from './useNames.ts';
import { useHasMoney } from './useHasMoney.ts';
import { Button } from '../parts/Button.tsx';
import { useDoc, useJob, useUnits } from '../plan.ts';
import { RateEditor } from '../rates/RateEditor.tsx';
import { openPanel } from '../session.ts';
import type { RecordId } from '../../model/cell.ts';
import { recordOf } from '../../model/doc.ts';
import { figureText } from '../../model/showNumber.ts';
import type { Line, Term } from '../../takeoff/line.ts';
import { rateBook } from '../../takeoff/rates/rateBook.ts';
import { sourceSays, takeoffText, whyText } from '../../words/whyWords.ts';

interface WhySourcesProps {
  readonly line: Line;
  /** The rate that is being changed, or null. */
  readonly changing: string | null;
  readonly onChange: (record: string | null) => void;
}

/** Terms that somebody set or read somewhere, not those measured or worked out. */
function isSourced(term: Term): boolean {
  return term.provenance !== 'measured' && term.provenance !== 'A';
}

/** Every rate of the line with its source in words, never more certain than it is, and the way to change it. */
export function WhySources({ line, changing, onChange }: WhySourcesProps): ReactElement | null {
  const terms = line.working.terms.filter(isSourced);
  if (terms.length === 0) return null;
  return (
    <section className={css.section}>
      <h3>{whyText.sources}</h3>
      {terms.map((term) => (
        <Source
          key={term.name}
          term={term}
          open={changing !== null && changing === term.name}
          onOpen={(open) => onChange(open ? term.name : null)}
        />
      ))}
    </section>
  );
}

/** A phrase as a sentence. */
function sentence(phrase: string): string {
  return `${phrase.charAt(0).toUpperCase()}${phrase.slice(1)}.`;
}

function Source({
  term,
  open,
  onOpen,
}: {
  readonly term: Term;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}): ReactElement {
  const units = useUnits();
  const names = useNames();
  const doc = useDoc((now) => now);
  const currency = useJob()?.currency ?? 'USD';
  const rate = recordOf(doc, 'rate', term.from as RecordId | null);
  const priced = rate ? rateBook(doc).rate(rate.code) : null;
  const isMoney =
    term.unit === 'minor' || (term.from?.startsWith('pricing:') ?? false) || (term.from?.startsWith('price:') ?? false);
  const show = (value: number): string => figureText(showQuantity(value, term.unit, units, currency));
  const { low, likely, high } = term.value;
  return (
    <div className={css.source}>
      <b>
        <span>{names.term(term)}</span>
        <span>{show(likely)}</span>
      </b>
      <p>
        {low === high ? '' : `${whyText.cases(show(low), show(high))} `}
        {sentence(sourceSays(term.source, term.provenance, term.fromMemory))}
      </p>
      {open && priced ? (
        <RateEditor rate={priced} onDone={() => onOpen(false)} />
      ) : (
        <SourceAction
          isMoney={isMoney}
          isRate={priced !== null || term.provenance !== 'own'}
          onRate={() => (priced ? onOpen(true) : openPanel('rates'))}
        />
      )}
    </div>
  );
}

function SourceAction({
  isMoney,
  isRate,
  onRate,
}: {
  readonly isMoney: boolean;
  readonly isRate: boolean;
  readonly onRate: () => void;
}): ReactElement | null {
  const hasMoney = useHasMoney();
  if (isMoney && !hasMoney) return null;
  if (isMoney) {
    return (
      <Button size="desk" onClick={() => openPanel('money')}>
        {takeoffText.money}
      </Button>
    );
  }
  if (!isRate) return null;
  return (
    <Button size="desk" onClick={onRate}>
      {whyText.changeRate}
    </Button>
  );
}
