import { type RefObject, useEffect, useRef } from 'react';

/** A tap anywhere in the chart takes the nearest row. A link that is followed by key or by a screen reader is left alone. */
export function useTaps(ref: RefObject<HTMLElement | null>, rows: RefObject<HTMLElement | null>, onTap: (y: number) => void): void {
  const tap = useRef(onTap);
  tap.current = onTap;
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const click = (event: MouseEvent) => {
      if (event.detail === 0 || event.ctrlKey || event.metaKey || event.shiftKey || (event.target as Element).closest('button') !== null)
        return;
      event.preventDefault();
      tap.current(event.clientY - (rows.current ?? element).getBoundingClientRect().top);
    };
    element.addEventListener('click', click);
    return () => element.removeEventListener('click', click);
  }, [ref, rows]);
}

/** Arrow keys, Home and End go through the rows in order of risk and take the focus along; Enter follows the link. */
export function useArrows(
  ref: RefObject<HTMLElement | null>,
  order: readonly string[],
  of: { readonly chosen: string | null; readonly onChoose: (colony: string) => void },
): void {
  const held = useRef({ order, ...of });
  held.current = { order, ...of };
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const press = (event: KeyboardEvent) => {
      const { order: colonies, chosen, onChoose } = held.current;
      const at = colonies.indexOf(chosen ?? '');
      const to = { ArrowDown: at + 1, ArrowUp: at < 0 ? 0 : at - 1, Home: 0, End: colonies.length - 1 }[event.key];
      const colony = to === undefined ? undefined : colonies[Math.max(0, Math.min(colonies.length - 1, to))];
      if (colony === undefined || !(event.target as Element).matches('a')) return;
      event.preventDefault();
      onChoose(colony);
      element.querySelector<HTMLElement>(`[data-colony="${CSS.escape(colony)}"]`)?.focus({ preventScroll: true });
    };
    element.addEventListener('keydown', press);
    return () => element.removeEventListener('keydown', press);
  }, [ref]);
}

/** Scrolls the rows under the axis until the chosen one is seen; where the page scrolls instead (`inside` false) the page, once a row was chosen. */
export function useKeptInView(
  ref: RefObject<HTMLElement | null>,
  row: { readonly colony: string; readonly top: number; readonly height: number } | undefined,
  inside: boolean,
): void {
  const colony = row?.colony;
  const top = row?.top ?? 0;
  const height = row?.height ?? 0;
  const last = useRef(colony);
  useEffect(() => {
    const element = ref.current;
    if (element === null || colony === undefined) return;
    const moved = last.current !== colony;
    last.current = colony;
    if (inside) {
      if (top < element.scrollTop) element.scrollTop = Math.max(0, top - 20);
      else if (top + height > element.scrollTop + element.clientHeight) element.scrollTop = top + height - element.clientHeight + 20;
    } else if (moved) element.querySelector(`[data-colony="${CSS.escape(colony)}"]`)?.scrollIntoView({ block: 'nearest' });
  }, [ref, colony, top, height, inside]);
}
