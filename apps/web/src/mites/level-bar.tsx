import type { ColonyMites } from '@winterheft/core';

const WIDTH = 160;
const MOST_FRAC = 0.09;

/** Where a level stands on the square-root axis, 0 to 1: the levels that decide get half the width. What is higher stands at the edge. */
export function placeOf(frac: number): number {
  return Math.sqrt(Math.min(MOST_FRAC, Math.max(0, frac)) / MOST_FRAC);
}

const x = (frac: number) => (2 + placeOf(frac) * (WIDTH - 4)).toFixed(1);

/** Twenty cases in the winter-bee weeks over the interval of the last wash, against the level that holds then. The figures stand beside it. */
export function LevelBar({ colony, treat }: { readonly colony: ColonyMites; readonly treat: number | null }) {
  const last = colony.washes.at(-1);
  const cases = colony.cases ?? [];
  const above = (frac: number) => treat !== null && frac > treat;
  return (
    <svg className="level-bar" viewBox={`0 0 ${WIDTH} 40`} width={WIDTH} height="40" aria-hidden="true">
      <path className="needle-short" d={cases.map((frac) => (above(frac) ? '' : `M${x(frac)} 14V24`)).join('')} />
      <path className="needle-tall" d={cases.map((frac) => (above(frac) ? `M${x(frac)} 3V24` : '')).join('')} />
      <path className="grid" d={`M0 24H${WIDTH}`} />
      {last === undefined ? null : (
        <>
          <path className="level-interval" d={`M${x(last.lowFrac)} 31H${x(last.highFrac)}`} />
          <path className="level-found" d={`M${x(last.rateFrac)} 26V36`} />
        </>
      )}
      {treat === null ? null : <path className="level-treat" d={`M${x(treat)} 0V40`} />}
    </svg>
  );
}
