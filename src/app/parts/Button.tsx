import { useId, type ButtonHTMLAttributes, type ReactElement, type ReactNode } from 'react';
import css from './Button.module.css';
import { cx } from '../look/cx.ts';

export interface ButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'disabled'> {
  /** `main` is chalk: the one next step, at most once on a screen. */
  readonly kind?: 'main' | 'plain';
  readonly size?: 'desk' | 'site';
  readonly wide?: boolean;
  readonly icon?: ReactNode;
  /** Why it cannot be pressed now: the border goes dashed and the sentence stands under it. */
  readonly blocked?: string | null | undefined;
  readonly children: ReactNode;
}

export function Button({
  kind = 'plain',
  size = 'site',
  wide = false,
  icon,
  blocked,
  children,
  className,
  onClick,
  type = 'button',
  ...rest
}: ButtonProps): ReactElement {
  const reasonId = useId();
  const button = (
    <button
      {...rest}
      type={type}
      className={cx(
        css.button,
        css[size],
        kind === 'main' && css.main,
        wide && css.wide,
        blocked && css.blocked,
        className,
      )}
      aria-disabled={blocked ? true : undefined}
      aria-describedby={blocked ? reasonId : rest['aria-describedby']}
      onClick={blocked ? (event) => event.preventDefault() : onClick}
    >
      {icon}
      <span>{children}</span>
    </button>
  );
  if (!blocked) return button;
  return (
    <span className={cx(css.withReason, wide && css.wide)}>
      {button}
      <span id={reasonId} className={css.reason}>
        {blocked}
      </span>
    </span>
  );
}
