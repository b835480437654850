import { type ComponentType, lazy } from 'react';
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
  /** The path without the part that may be left out: where a link to the screen goes. */
  readonly address: string;
  readonly load: () => Promise<unknown>;
  /** The screen itself once its file is here, else a stand-in that waits for it (and that React shows for a third of a second at least). */
  readonly screen: () => ComponentType;
  /** Rank in the bottom bar; the first four of those that have one are shown. */
  readonly bar?: number;
  /** Stands in the list of all places. */
  readonly listed: boolean;
  /** Without header and bottom bar: for entry in gloves, which needs the whole height. */
  readonly bare: boolean;
  /** Has the header all the same where there is room for it: at a desk. */
  readonly headed: boolean;
}

function place(
  name: PlaceName,
  path: string,
  load: () => Promise<Screen>,
  options: { readonly bar?: number; readonly listed?: boolean; readonly bare?: boolean; readonly headed?: boolean } = {},
): Place {
  const { listed = true, bare = false, headed = false, ...rest } = options;
  let loaded: ComponentType | null = null;
  const loadOnce = async () => {
    const screen = await load();
    loaded = screen.default;
    return screen;
  };
  const Waiting = lazy(loadOnce);
  const address = path.replace(/\/:\w+\?$/, '');
  return { name, path, address, load: loadOnce, screen: () => loaded ?? Waiting, listed, bare, headed, ...rest };
}

/** In the order of the work: what is opened first stands first. */
export const places: readonly Place[] = [
  place('round', '/round/:hive?', () => import('../round/round-screen.tsx'), { bar: 1, bare: true, headed: true }),
  place('outlook', '/outlook', () => import('../outlook/outlook-screen.tsx'), { bar: 2 }),
  place('colony', '/colony/:colony', () => import('../colony/colony-screen.tsx'), { listed: false }),
  place('provision', '/provision', () => import('../provision/provision-screen.tsx'), { bar: 3 }),
  place('bank', '/bank', () => import('../bank/bank-screen.tsx')),
  place('top', '/top', () => import('../hivetop/top-screen.tsx')),
  place('kit', '/kit', () => import('../kit/kit-screen.tsx')),
  place('mites', '/mites', () => import('../mites/mites-screen.tsx')),
  place('wash', '/mites/wash/:colony?', () => import('../mites/wash-screen.tsx'), { listed: false }),
  place('watch', '/watch', () => import('../watch/watch-screen.tsx')),
  place('signs', '/watch/:colony', () => import('../watch/signs-screen.tsx'), { listed: false, bare: true }),
  place('spring', '/spring', () => import('../spring/spring-screen.tsx')),
  place('count', '/spring/:colony', () => import('../spring/count-screen.tsx'), { listed: false, bare: true }),
  place('trace', '/trace/:kind/:id', () => import('../trace/trace-screen.tsx'), { listed: false }),
  place('sheet', '/sheet', () => import('../sheet/sheet-screen.tsx')),
  place('enter', '/sheet/enter', () => import('../sheet/enter-screen.tsx'), { listed: false }),
  place('tags', '/tags', () => import('../tags/tags-screen.tsx'), { listed: false }),
  place('yard', '/yard', () => import('../yard/yard-screen.tsx'), { bar: 5 }),
  place('keep', '/keep', () => import('../keep/keep-screen.tsx'), { bar: 4 }),
  place('settings', '/settings', () => import('../settings/settings-screen.tsx'), { bar: 6 }),
  place('begin', '/begin', () => import('../begin/begin-screen.tsx'), { bare: true }),
];

/** The four places of the bottom bar. */
export const barPlaces: readonly Place[] = places
  .filter((entry) => entry.bar !== undefined)
  .sort((a, b) => (a.bar ?? 0) - (b.bar ?? 0))
  .slice(0, 4);

/** Loads the screen an address leads to, before anything is drawn. A file that does not come is told where the screen would stand. */
export async function loadScreenAt(hash: string): Promise<void> {
  const first = hash.replace(/^#/, '').split('/')[1];
  const entry = first ? places.find(({ path }) => path.split('/')[1] === first) : barPlaces[0];
  await entry?.load().catch(() => undefined);
}

/** Loads every screen while the page is idle, so that none is missing when the radio is off or a new version has replaced the files. */
export function loadAllScreens(): void {
  const idle = 'requestIdleCallback' in window ? window.requestIdleCallback : (run: () => void) => setTimeout(run, 1500);
  idle(() => {
    for (const entry of places) entry.load().catch(() => undefined);
  });
}
