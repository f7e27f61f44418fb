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

/** Everything that drawing needs but the context. A new object means: draw again. */
export function useDrawing(
  element: Element | null,
  camera: Camera,
  view: View,
  themeName: string,
  images: PageImages | null,
): Omit<Drawing, 'context'> {
  const [theme, setTheme] = useState<Theme>(PAPER_THEME);
  // The name is not used but says when the tokens have changed.
  useEffect(() => {
    if (element) setTheme(readTheme(element));
  }, [element, themeName]);
  const fonts = useFontsRead();
  const pictures = useImagesRead(images);
  return useMemo(
    () => ({ camera, view, theme, images, fonts, pictures }),
    [camera, view, theme, images, fonts, pictures],
  );
}
