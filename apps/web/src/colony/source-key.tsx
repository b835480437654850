import { words } from '../app/words.ts';
import type { SourceGroup } from './source-groups.ts';

export const sourceId = (group: SourceGroup): string => `source-${group}`;

/** Opens where the figures of a section come from, and goes there. */
export function SourceKey({ group }: { readonly group: SourceGroup }) {
  const { colony } = words;
  const open = () => {
    const details = document.getElementById(sourceId(group));
    if (!(details instanceof HTMLDetailsElement)) return;
    details.open = true;
    details.scrollIntoView({ block: 'start' });
    details.querySelector('summary')?.focus({ preventScroll: true });
  };
  return (
    <button type="button" className="link" onClick={open} aria-label={colony.whereFromLong(colony.sources[group])}>
      {colony.whereFrom}
    </button>
  );
}
