import { type RefObject, useLayoutEffect, useState } from 'react';
import { textScale } from '../verdict/text-scale.ts';

const LEAST_PX = 220;

export interface ScreenRoom {
  /** Height from the element's top to what is fixed at the bottom, at the top of the page [px]. */
  readonly height: number;
  readonly scale: number;
  readonly wide: boolean;
}

const WIDE_PX = 900;
/** What stays to be seen of the page below, so that one knows it goes on [px]. */
const PEEK_PX = 48;

/** How much of the first view is left for an element; follows turning the phone and the size of text. */
export function useRoom(ref: RefObject<HTMLElement | null>, fixed: string, deps: unknown): ScreenRoom {
  const [room, setRoom] = useState<ScreenRoom>({ height: LEAST_PX, scale: 1, wide: false });
  // biome-ignore lint/correctness/useExhaustiveDependencies: `deps` stands for what moves the element
  useLayoutEffect(() => {
    const measure = () => {
      const element = ref.current;
      if (element === null) return;
      const top = element.getBoundingClientRect().top + window.scrollY;
      let taken = 0;
      for (const bar of document.querySelectorAll<HTMLElement>(fixed)) taken += bar.offsetHeight;
      const wide = window.innerWidth >= WIDE_PX;
      const height = Math.max(LEAST_PX, Math.floor(window.innerHeight - top - taken - (wide ? PEEK_PX : 0)));
      const next = { height, scale: textScale(), wide };
      setRoom((before) => (before.height === next.height && before.scale === next.scale && before.wide === next.wide ? before : next));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(document.body);
    window.addEventListener('resize', measure);
    return () => {
      observer.disconnect();
      window.removeEventListener('resize', measure);
    };
  }, [ref, fixed, deps]);
  return room;
}
