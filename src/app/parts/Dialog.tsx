import { Dialog as Base } from '@base-ui/react/dialog';
import type { ReactElement, ReactNode } from 'react';
import css from './Dialog.module.css';
import { Icon } from './Icon.tsx';
import { InDialog } from './inDialog.ts';
import { lastOutside } from './lastOutside.ts';
import { ui } from '../../words/uiWords.ts';

interface DialogProps {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Buttons along the bottom. */
  readonly foot?: ReactNode;
  readonly wide?: boolean;
  /** As large as the screen lets it, whatever stands in it: a book whose pages differ must not jump. */
  readonly full?: boolean;
}

/** A question that must be answered before going on. Esc, the close button and a press outside leave it unanswered. */
export function Dialog({
  title,
  open,
  onClose,
  children,
  foot,
  wide = false,
  full = false,
}: DialogProps): ReactElement {
  return (
    <Base.Root
      open={open}
      onOpenChange={(next) => {
        if (!next) onClose();
      }}
    >
      <Base.Portal>
        <Base.Backdrop className={css.backdrop} />
        <Base.Popup className={full ? css.full : wide ? css.wide : css.popup} finalFocus={lastOutside}>
          <div className={css.head}>
            <Base.Title className={css.title}>{title}</Base.Title>
            <Base.Close className={css.close} aria-label={ui.close}>
              <Icon name="close" />
            </Base.Close>
          </div>
          <div className={css.body}>
            <InDialog value={true}>{children}</InDialog>
          </div>
          {foot && <div className={css.foot}>{foot}</div>}
        </Base.Popup>
      </Base.Portal>
    </Base.Root>
  );
}
