import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width a chart has on the page [px], so that it is drawn at its own size and its words stay readable. */
export function useWidth<E extends HTMLElement>(atLeast = 300): [RefObject<E | null>, number] {
  const frame = useRef<E>(null);
  const [width, setWidth] = useState(760);
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const measure = () => setWidth(Math.max(atLeast, Math.round(element.clientWidth)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [atLeast]);
  return [frame, width];
}
