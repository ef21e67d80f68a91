import { signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';

/** As the style sheets say: below it strips become cards. */
const NARROW = '(max-width: 45rem)';

/** The window is a phone's. */
export const narrow = signal(false);

export function followWidth(): void {
  const query = matchMedia(NARROW);
  const read = (): void => {
    narrow.value = query.matches;
  };
  read();
  query.addEventListener('change', read);
}

/** Pixels of one rem: letters in a drawing grow with the page's. */
export const remPx = (): number => Number.parseFloat(getComputedStyle(document.documentElement).fontSize);

/** The width in pixels that an element has, followed as it changes; 0 before it is laid out. */
export function useWidth<E extends Element>(): [{ current: E | null }, number] {
  const place = useRef<E>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    if (place.current === null) return undefined;
    const watch = new ResizeObserver(([entry]) => setWidth(Math.floor(entry!.contentRect.width)));
    watch.observe(place.current);
    return () => watch.disconnect();
  }, []);
  return [place, width];
}
