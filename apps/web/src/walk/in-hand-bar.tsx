import { useMemo } from 'react';
import { useHolding } from '../app/session.ts';
import { useUnits } from '../app/use-units.ts';
import { words } from '../app/words.ts';
import { boxCount, SLOTS } from './hand.ts';
import { namesOf } from './naming.ts';
import { walkOf } from './walk.ts';
import './in-hand.css';

/** Frames taken and not yet placed, on every screen from the first one in hand until the box is empty. A way back to the walk. */
export function InHandBar() {
  const holding = useHolding();
  const units = useUnits();
  const walk = useMemo(() => (holding === null ? null : walkOf(holding)), [holding]);
  if (holding === null) return null;
  const { capped, light } = boxCount(holding.inHand);
  if (capped + light === 0) return null;
  const { provision } = words;
  const stop = walk?.now?.stop;
  const at = stop === undefined ? null : stop.colony === null ? provision.shed : namesOf(holding, units).colony(stop.colony);
  return (
    <aside className="in-hand" aria-label={provision.inHandLabel}>
      <a href="#/provision">
        <SlotRow capped={capped} light={light} />
        <span>{provision.inHand(capped, light)}</span>
        {at === null ? null : <strong>{provision.nowAt(at)}</strong>}
      </a>
    </aside>
  );
}

const STEP = 8;

/** Ten slots from above: filled, hollow, empty. More than ten stand on. */
function SlotRow({ capped, light }: { readonly capped: number; readonly light: number }) {
  const slots = Math.max(SLOTS, capped + light);
  return (
    <svg className="in-hand-slots" viewBox={`0 0 ${slots * STEP} 18`} width={slots * STEP} height="18" aria-hidden="true">
      {Array.from({ length: slots }, (_, i) => {
        const x = i * STEP;
        if (i < capped) return <rect key={x} x={x + 1} width="5.4" height="18" fill="currentColor" />;
        if (i < capped + light)
          return <rect key={x} x={x + 1.8} y="0.8" width="3.8" height="16.4" fill="none" stroke="currentColor" strokeWidth="1.6" />;
        return <path key={x} d={`M${x + 3.7} 13v5`} stroke="currentColor" strokeWidth="2" />;
      })}
    </svg>
  );
}
