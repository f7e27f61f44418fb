import { useId, useMemo, type ReactElement } from 'react';
import type { ZoneMapPage } from '../../exchange/zoneMapInput.ts';

interface SheetImageProps {
  readonly page: ZoneMapPage;
  readonly name: string;
  readonly className: string;
  /** At its size on paper, in millimetres. */
  readonly trueSize?: boolean;
}

/** Every sheet defines its hatches under the same names: on one screen each needs names of its own. */
function withOwnNames(svg: string, prefix: string): string {
  return svg.replaceAll(/ id="/g, ` id="${prefix}`).replaceAll('url(#', `url(#${prefix}`);
}

/** One sheet of the zone map. */
export function SheetImage({ page, name, className, trueSize = false }: SheetImageProps): ReactElement {
  const prefix = useId().replaceAll(/[^a-z0-9]/gi, '');
  const html = useMemo(() => ({ __html: withOwnNames(page.svg, `s${prefix}`) }), [page.svg, prefix]);
  const size = trueSize ? { width: `${String(page.widthMm)}mm`, height: `${String(page.heightMm)}mm` } : {};
  // Our own painters made it out of numbers and escaped text: nothing of it comes from outside as markup.
  // oxlint-disable-next-line react/no-danger
  return <div className={className} style={size} role="img" aria-label={name} dangerouslySetInnerHTML={html} />;
}
