import { useEffect } from 'react';
import { useSession, type Theme } from '../session.ts';

const DARK = '(prefers-color-scheme: dark)';

/** The theme that is drawn: what the person chose, else what the device asks for. */
export function themeDrawn(theme: Theme): 'light' | 'dark' | 'daylight' {
  if (theme !== 'device') return theme;
  return matchMedia(DARK).matches ? 'dark' : 'light';
}

/** Writes the theme on the page and follows the device while nothing else was chosen. */
export function useThemeOnPage(): void {
  const theme = useSession((session) => session.theme);
  useEffect(() => {
    const write = (): void => {
      document.documentElement.dataset['theme'] = themeDrawn(theme);
    };
    write();
    const device = matchMedia(DARK);
    device.addEventListener('change', write);
    return () => device.removeEventListener('change', write);
  }, [theme]);
}
