import { dayMonth, type UnitFormat } from '@winterheft/words';
import { useMemo } from 'react';
import { words } from '../app/words.ts';
import { useDraft } from '../ui/use-draft.ts';
import { figure } from '../weighing/figures.ts';
import type { Jump } from '../weighing/jump.ts';

export interface AskedJump extends Jump {
  readonly hive: string;
  readonly label: string;
}

interface JumpQuestionsProps {
  readonly jumps: readonly AskedJump[];
  readonly units: UnitFormat;
  readonly onGo: (hive: string) => void;
  readonly onRight: (record: string) => void;
}

/** Weights that jumped without a reason on record: asked at the desk, where there is time, and never at the hive. */
export function JumpQuestions({ jumps, units, onGo, onRight }: JumpQuestionsProps) {
  const { jump } = words.round;
  if (jumps.length === 0) return null;
  return (
    <ul className="round-jumps">
      {jumps.map(({ hive, label, record, changeKg, since }) => (
        <li key={record}>
          <p>{jump.asks(label, `${figure(units, Math.abs(changeKg))} ${units.massUnit}`, changeKg < 0, dayMonth(since))}</p>
          <span className="keys">
            <button type="button" className="key" onClick={() => onRight(record)}>
              {jump.right}
            </button>
            <button type="button" className="key" onClick={() => onGo(hive)}>
              {jump.open(label)}
            </button>
          </span>
        </li>
      ))}
    </ul>
  );
}

const asNames = (stored: unknown) => (Array.isArray(stored) ? stored.filter((name): name is string => typeof name === 'string') : null);

/** Weighings whose jump the keeper has said is right, kept on this device. */
export function useAcceptedJumps(): readonly [ReadonlySet<string>, (record: string) => void] {
  const [names, setNames] = useDraft<readonly string[]>('jumps-right', [], asNames);
  return [useMemo(() => new Set(names), [names]), (record) => setNames([...names, record])];
}
