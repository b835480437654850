import { syrup } from '@winterheft/core';
import { words } from '../app/words.ts';
import type { Names } from '../walk/naming.ts';
import type { Stop } from '../walk/stop.ts';
import { putOffOf } from '../walk/ticks.ts';
import { SwapPairs } from './swap-pairs.tsx';

interface OpenProps {
  readonly stop: Stop;
  readonly names: Names;
  readonly canTick: boolean;
  readonly onTick: () => void;
  readonly onPass: () => void;
}

/** What an open stop shows: the combs, the cautions, the keys. */
export function StopOpen({ stop, names, canTick, onTick, onPass }: OpenProps) {
  const { provision } = words;
  const off = putOffOf(stop);
  return (
    <>
      {stop.kind === 'swap' ? <SwapPairs stop={stop} names={names} /> : null}
      <Care stop={stop} names={names} />
      <div className="keys">
        <button type="button" className="key key-solid stop-key" disabled={!canTick} onClick={onTick}>
          {provision.done}
        </button>
        {off === null ? null : (
          <button type="button" className="key stop-key" onClick={onPass}>
            {provision.pass}
          </button>
        )}
        {off === null || off === 'look' ? null : <span className="note">{provision.passNote[off]}</span>}
      </div>
    </>
  );
}

/** What can go wrong at this stop, said every time. */
function Care({ stop, names }: { readonly stop: Stop; readonly names: Names }) {
  const { provision } = words;
  switch (stop.kind) {
    case 'swap':
      return <p className="care">{provision.cautions.join(' ')}</p>;
    case 'syrup':
      return (
        <>
          <MixLine litres={stop.syrup?.litres ?? 0} names={names} />
          <p className="care">{provision.syrupCare}</p>
        </>
      );
    case 'candy':
      return <p className="care">{provision.candyCare}</p>;
    case 'unite':
      return <p className="care">{provision.uniteCare}</p>;
    default:
      return null;
  }
}

/** Sugar and water of an amount of 2:1 syrup. */
export function MixLine({ litres, names }: { readonly litres: number; readonly names: Names }) {
  const made = syrup({ ratio: '2:1', basis: 'mass', volumeL: Math.max(litres, 0.1) });
  if (!made.ok) return null;
  const { mass, volume } = names.units;
  return <p className="care">{words.provision.mix(volume(litres), mass(made.value.sugarKg), mass(made.value.waterKg))}</p>;
}

export function LookKeys({
  frames,
  lastLook,
  onAnswer,
}: {
  readonly frames: number;
  readonly lastLook: string | null;
  readonly onAnswer: (answer: 'clean' | 'signs' | 'not-today') => void;
}) {
  const { provision } = words;
  return (
    <>
      <p className="care">{provision.lookWhy(frames, lastLook)}</p>
      <div className="look-keys">
        <button type="button" className="key" onClick={() => onAnswer('clean')}>
          {provision.clean}
        </button>
        <button type="button" className="key" onClick={() => onAnswer('signs')}>
          {provision.signs}
        </button>
        <button type="button" className="key" onClick={() => onAnswer('not-today')}>
          {provision.notToday}
        </button>
      </div>
      <p className="care">{provision.signsNote}</p>
    </>
  );
}
