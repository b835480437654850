import { words } from '../app/words.ts';
import { Icon } from '../ui/icons.tsx';
import type { HiveFacts } from '../weighing/hive-facts.ts';

/** `two deeps, wood`: boxes of one depth counted together, from the floor up. */
function builtWords({ boxes, material }: HiveFacts): string {
  const { round } = words;
  if (boxes.length === 0) return round.buildUnknown;
  const depths = [...new Set(boxes)];
  const stack = depths.map((depth) => round.boxes(boxes.filter((box) => box === depth).length, round.depths[depth] ?? depth));
  return round.built(stack.join(', '), material === null ? '' : round.materials[material]);
}

interface HiveHeadProps {
  readonly label: string;
  readonly place: number;
  readonly all: number;
  readonly facts: HiveFacts;
  readonly onList: () => void;
  /** Null where this device cannot read tags. */
  readonly onScan: (() => void) | null;
}

/** Which hive it is; opens the list of the round. Beside it the way in by the tag on the hive. */
export function HiveHead({ label, place, all, facts, onList, onScan }: HiveHeadProps) {
  const { round } = words;
  return (
    <div className="round-head">
      <button type="button" className="round-open-list" onClick={onList}>
        <span className={`round-label num${label.length > 4 ? ' round-label-long' : ''}`}>{label}</span>
        <span className="round-where">
          <b>
            {round.of(place, all)} <Icon name="down" size={14} />
          </b>
          <span>{builtWords(facts)}</span>
        </span>
        <span className="visually-hidden">{round.openList}</span>
      </button>
      {onScan === null ? null : (
        <button type="button" className="round-scan-key" aria-label={round.scan.open} onClick={onScan}>
          <Icon name="scan" size={40} />
        </button>
      )}
    </div>
  );
}
