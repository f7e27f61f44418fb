import { useEffect, useMemo, useState } from 'react';
import type { Camera, View } from '../camera.ts';
import { PAPER_THEME, type Theme } from '../look.ts';
import type { Drawing } from './drawPrims.ts';
import type { PageImages } from './pageImages.ts';
import { readTheme } from './readTheme.ts';

/** Letters are drawn again once their font has come: a canvas does not do that by itself. */
function useFontsRead(): number {
  const [times, setTimes] = useState(0);
  useEffect(() => {
    let here = true;
    const font = '800 16px "Overpass Variable"';
    document.fonts.load(font).then(
      () => here && setTimes((count) => count + 1),
      () => null,
    );
    return () => {
      here = false;
    };
  }, []);
  return times;
}

function useImagesRead(images: PageImages | null): number {
  const [times, setTimes] = useState(0);
  useEffect(() => images?.listen(() => setTimes((count) => count + 1)), [images]);
  return times;
}

/** The inks, read again whenever the page or the device changes its theme. */
function useTheme(element: Element | null): Theme {
  const [theme, setTheme] = useState<Theme>(PAPER_THEME);
  useEffect(() => {
    if (!element) return;
    const read = (): void => setTheme(readTheme(element));
    read();
    const onPage = new MutationObserver(read);
    onPage.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    const device = matchMedia('(prefers-color-scheme: dark)');
    device.addEventListener('change', read);
    return () => {
      onPage.disconnect();
      device.removeEventListener('change', read);
    };
  }, [element]);
  return theme;
}

/** Everything that drawing needs but the context. A new object means: draw again. */
export function useDrawing(
  element: Element | null,
  camera: Camera,
  view: View,
  images: PageImages | null,
): Omit<Drawing, 'context'> {
  const theme = useTheme(element);
  const fonts = useFontsRead();
  const pictures = useImagesRead(images);
  return useMemo(
    () => ({ camera, view, theme, images, fonts, pictures }),
    [camera, view, theme, images, fonts, pictures],
  );
}
