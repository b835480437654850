import { words } from '../app/words.ts';
import { Icon } from '../ui/icons.tsx';
import type { BigKey } from '../weighing/check.ts';
import type { WalkHive } from '../weighing/walk.ts';

interface BigKeysProps {
  readonly bigKey: BigKey;
  readonly next: WalkHive | null;
  /** Something has to be settled first: the key is gone, not pale. */
  readonly gone: boolean;
  readonly canUndo: boolean;
  readonly onGo: () => void;
  readonly onUndo: () => void;
}

/** Undo and on: always in the same place, mirrored for the left hand. */
export function BigKeys({ bigKey, next, gone, canUndo, onGo, onUndo }: BigKeysProps) {
  const { round } = words;
  return (
    <div className="round-act">
      <button type="button" className="round-undo" disabled={!canUndo} onClick={onUndo}>
        {round.undo}
      </button>
      {gone ? null : (
        <button type="button" className={bigKey.to === 'skip' ? 'round-go round-go-skip' : 'round-go'} onClick={onGo}>
          {bigKey.to === 'edge' ? (
            <span>{round.toEdge[bigKey.edge]}</span>
          ) : next === null ? (
            <span>{round.finish}</span>
          ) : (
            <>
              <span>{bigKey.to === 'skip' ? round.skipWord : round.nextWord}</span>
              <b className="num">{next.label}</b>
            </>
          )}
          <Icon name="next" size={28} />
        </button>
      )}
    </div>
  );
}
