import { useEffect, useRef, useState, type ReactElement, type ReactNode } from 'react';

/** So many rows come and go together. */
const LOT = 60;
/** Rows this far above and below what is seen are there, so that keys and fingers find them. */
const MARGIN = '600px 0px';
/** A row of one line; what a lot really takes is known once it has been there. */
const ROW_PX = 44;

interface ItemRowsProps {
  readonly count: number;
  /** A row that must be there wherever it stands: the picked one. -1: none. */
  readonly mustShow: number;
  readonly row: (index: number) => ReactNode;
}

/** Rows of a list of any length: only those near what is seen are in the page; the others keep their room. */
export function ItemRows({ count, mustShow, row }: ItemRowsProps): ReactElement {
  const lots = Array.from({ length: Math.ceil(count / LOT) }, (_, lot) => {
    const from = lot * LOT;
    const to = Math.min(count, from + LOT);
    return <Lot key={from} from={from} to={to} count={count} pinned={mustShow >= from && mustShow < to} row={row} />;
  });
  return <>{lots}</>;
}

interface LotProps extends Pick<ItemRowsProps, 'count' | 'row'> {
  readonly from: number;
  readonly to: number;
  readonly pinned: boolean;
}

function Lot({ from, to, count, pinned, row }: LotProps): ReactElement {
  const [near, setNear] = useState(from === 0);
  const [roomPx, setRoomPx] = useState((to - from) * ROW_PX);
  const lot = useRef<HTMLDivElement>(null);

  useEffect(() => {
    const element = lot.current;
    if (!element) return;
    const watcher = new IntersectionObserver(
      ([entry]) => {
        if (!entry) return;
        setNear(entry.isIntersecting);
        setRoomPx(entry.boundingClientRect.height);
      },
      { root: scrollerOf(element), rootMargin: MARGIN },
    );
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);

  if (!near && !pinned) return <div ref={lot} role="presentation" style={{ height: roomPx }} />;
  const rows = Array.from({ length: to - from }, (_, i) => (
    <div key={from + i} role="listitem" aria-setsize={count} aria-posinset={from + i + 1}>
      {row(from + i)}
    </div>
  ));
  return (
    <div ref={lot} role="presentation">
      {rows}
    </div>
  );
}

function scrollerOf(element: Element): Element | null {
  let at = element.parentElement;
  while (at && !/auto|scroll/.test(getComputedStyle(at).overflowY)) at = at.parentElement;
  return at;
}
