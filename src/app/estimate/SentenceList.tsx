import type { ReactElement } from 'react';
import css from './Estimate.module.css';

/** Sentences of an estimate, to be read. */
export function SentenceList({
  title,
  sentences,
}: {
  readonly title: string;
  readonly sentences: readonly string[];
}): ReactElement | null {
  if (sentences.length === 0) return null;
  return (
    <section className={css.sentences} aria-label={title}>
      <h3>{title}</h3>
      <ol>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ol>
    </section>
  );
}
