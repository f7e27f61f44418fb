import { useEffect, useId, useRef, type ReactElement, type ReactNode } from 'react';
import css from './Money.module.css';
import { cx } from '../look/cx.ts';
import { Icon } from '../parts/Icon.tsx';

interface MoneySectionProps {
  readonly title: string;
  /** What is set in it, in a few words. */
  readonly says: string;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly children: ReactNode;
}

/** One subject of the money page; what is folded away still says what it holds. */
export function MoneySection({ title, says, open, onOpen, children }: MoneySectionProps): ReactElement {
  const id = useId();
  const head = useRef<HTMLHeadingElement>(null);
  const pressed = useRef(false);
  // What was open above has folded away meanwhile: the head that was pressed stays in sight.
  useEffect(() => {
    if (open && pressed.current) head.current?.scrollIntoView({ block: 'nearest' });
    pressed.current = false;
  }, [open]);
  return (
    <section className={css.section} aria-label={title}>
      <h3 ref={head}>
        <button
          type="button"
          className={css.fold}
          aria-expanded={open}
          aria-controls={open ? id : undefined}
          onClick={() => {
            pressed.current = true;
            onOpen(!open);
          }}
        >
          <b>{title}</b>
          <span>{says}</span>
          <i className={cx(css.turn, open && css.up)}>
            <Icon name="down" small />
          </i>
        </button>
      </h3>
      {open && (
        <div id={id} className={css.fields}>
          {children}
        </div>
      )}
    </section>
  );
}
