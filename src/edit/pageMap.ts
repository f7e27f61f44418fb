import { fitTrue, trueMatrix, type KnownDimension, type TrueResult } from '../geometry/fitTrue.ts';
import type { Point } from '../geometry/floorShape.ts';
import { invert, mapPoint, type Matrix } from '../geometry/transform.ts';
import type { Page } from '../model/records/page.ts';

type Pixels = { readonly from: Point; readonly to: Point };

/** What truing needs of a page: also of one that is only being thought of. */
export type Trueable = {
  readonly dimensions: readonly KnownDimension[];
  readonly levelLine?: Pixels | null | undefined;
};

export function fitOf(page: Trueable): TrueResult {
  return fitTrue(page.dimensions, page.levelLine ?? null);
}

export function isTrued(page: Trueable): boolean {
  return fitOf(page).ok;
}

/** From the page's pixels to floor mm: trued, or by the guess that only makes it visible. */
export function pageMatrix(page: Trueable & Pick<Page, 'origin' | 'guessMmPerPx'>): Matrix {
  const result = fitOf(page);
  if (result.ok) return trueMatrix(result.fit, page.origin);
  return [page.guessMmPerPx, 0, 0, page.guessMmPerPx, page.origin[0], page.origin[1]];
}

/** The pixel of a page that lies at a floor point; null when the page's map cannot be turned round. */
export function pixelAt(page: Trueable & Pick<Page, 'origin' | 'guessMmPerPx'>, at: Point): Point | null {
  const back = invert(pageMatrix(page));
  return back && mapPoint(back, at);
}

/** mm a pixel, the mean of both directions. */
export function pageScale(page: Trueable & Pick<Page, 'origin' | 'guessMmPerPx'>): number {
  const [a, b, c, d] = pageMatrix(page);
  return Math.sqrt(Math.abs(a * d - b * c));
}
