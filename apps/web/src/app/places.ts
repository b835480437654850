import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import type { words } from './words.ts';

export type PlaceName = keyof (typeof words)['shell']['places'];

interface Screen {
  readonly default: ComponentType;
}

/** One screen. To add one: a row here, its name in packages/words, its file. */
export interface Place {
  readonly name: PlaceName;
  /** Pattern of the address after `#`, in the manner of wouter. */
  readonly path: string;
  readonly load: () => Promise<Screen>;
  readonly Screen: LazyExoticComponent<ComponentType>;
  /** Rank in the bottom bar; the first four of those that have one are shown. */
  readonly bar?: number;
  /** Stands in the list of all places. */
  readonly listed: boolean;
  /** Without header and bottom bar: for entry in gloves, which needs the whole height. */
  readonly bare: boolean;
}

function place(name: PlaceName, path: string, load: () => Promise<Screen>, options: { readonly bar?: number; readonly listed?: boolean; readonly bare?: boolean } = {}): Place {
  const { listed = true, bare = false, ...rest } = options;
  return { name, path, load, Screen: lazy(load), listed, bare, ...rest };
}

/** In the order of the work: what is opened first stands first. */
export const places: readonly Place[] = [
  place('yard', '/yard', () => import('../begin/yard-screen.tsx'), { bar: 5 }),
  place('keep', '/keep', () => import('../keep/keep-screen.tsx'), { bar: 4 }),
  place('settings', '/settings', () => import('../settings/settings-screen.tsx'), { bar: 6 }),
  place('begin', '/begin', () => import('../begin/begin-screen.tsx'), { bare: true }),
  place('places', '/places', () => import('./places-screen.tsx'), { listed: false }),
];

/** The four places of the bottom bar. */
export const barPlaces: readonly Place[] = places
  .filter((entry) => entry.bar !== undefined)
  .sort((a, b) => (a.bar ?? 0) - (b.bar ?? 0))
  .slice(0, 4);

/** Loads every screen while the page is idle, so that none is missing when the radio is off or a new version has replaced the files. */
export function loadAllScreens(): void {
  const idle = 'requestIdleCallback' in window ? window.requestIdleCallback : (run: () => void) => setTimeout(run, 1500);
  idle(() => {
    for (const entry of places) entry.load().catch(() => undefined);
  });
}
