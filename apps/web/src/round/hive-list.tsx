import type { ColonyOutlook } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { ClockLine, TroubleLine } from '../app/lines.tsx';
import { words } from '../app/words.ts';
import { Icon } from '../ui/icons.tsx';
import { StateShape } from '../ui/states.tsx';
import { headlineOf } from '../weighing/told.ts';
import type { WalkHive, WalkYard } from '../weighing/walk.ts';
import { RoundDone } from './round-done.tsx';
import { RoundLinks } from './round-links.tsx';
import { useLines } from './use-lines.ts';

interface HiveListProps {
  readonly walk: readonly WalkYard[];
  readonly current: string;
  readonly currentLabel: string;
  readonly units: UnitFormat;
  /** What can be moved from the hive on the screen to another one, in words. */
  readonly movable: string | null;
  readonly onGo: (hive: string) => void;
  readonly onMove: () => void;
  readonly onScan: (() => void) | null;
  readonly onClose: () => void;
}

/** Every hive of the round in walking order with how far it is; and the way to the other screens. */
export function HiveList({ walk, current, currentLabel, units, movable, onGo, onMove, onScan, onClose }: HiveListProps) {
  const { round } = words;
  const lines = useLines();
  const all = walk.flatMap((yard) => yard.hives);
  const done = all.filter((hive) => hive.stop === 'done').length;
  return (
    <main className="round-list">
      <TroubleLine />
      <ClockLine />
      <div className="round-list-head">
        <h1>{round.listTitle}</h1>
        <p>{round.listDone(done, all.length)}</p>
      </div>
      {done === all.length ? <RoundDone /> : null}
      <div className="round-list-keys">
        <button type="button" className="round-back" onClick={onClose}>
          <Icon name="back" /> {round.backToHive(currentLabel)}
        </button>
        {onScan === null ? null : (
          <button type="button" className="round-back" onClick={onScan}>
            <Icon name="scan" /> {round.scan.open}
          </button>
        )}
        {movable === null ? null : (
          <button type="button" className="round-back" onClick={onMove}>
            {round.move.ask(currentLabel)}
          </button>
        )}
      </div>
      <HiveRows walk={walk} current={current} units={units} lines={lines} onGo={onGo} />
      <RoundLinks />
    </main>
  );
}

interface MoveListProps extends Pick<HiveListProps, 'walk' | 'current' | 'currentLabel' | 'units' | 'onClose'> {
  readonly movable: string;
  readonly onTo: (hive: string) => void;
}

/** Readings were typed at the wrong hive: the one they belong to is chosen, and they go along. */
export function MoveList({ walk, current, currentLabel, units, movable, onTo, onClose }: MoveListProps) {
  const { round } = words;
  const lines = useLines();
  const free = walk.map((yard) => ({ ...yard, hives: yard.hives.filter(({ hive, stop }) => hive !== current && stop !== 'begun') }));
  return (
    <main className="round-list">
      <TroubleLine />
      <h1>{round.move.title}</h1>
      <p>{round.move.what(movable, currentLabel)}</p>
      <button type="button" className="round-back" onClick={onClose}>
        <Icon name="back" /> {round.move.back(currentLabel)}
      </button>
      <HiveRows walk={free} current={current} units={units} lines={lines} onGo={onTo} />
    </main>
  );
}

interface HiveRowsProps extends Pick<HiveListProps, 'walk' | 'current' | 'units' | 'onGo'> {
  readonly lines: ReturnType<typeof useLines>;
}

function HiveRows({ walk, current, units, lines, onGo }: HiveRowsProps) {
  return (
    <>
      {walk.map((yard) => (
        <section key={yard.yard} aria-label={yard.name}>
          {walk.length > 1 ? <h2>{yard.name}</h2> : null}
          <ul className="round-hives">
            {yard.hives.map((hive) => (
              <li key={hive.hive}>
                <button
                  type="button"
                  className="round-hives-key"
                  aria-current={hive.hive === current ? 'step' : undefined}
                  onClick={() => onGo(hive.hive)}
                >
                  <b className="num">{hive.label}</b>
                  <HiveStop hive={hive} line={lines.get(hive.colony)} units={units} />
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

/** An open ring while it is begun, the verdict once it is weighed, nothing before. */
export function HiveStop({
  hive,
  line,
  units,
}: {
  readonly hive: WalkHive;
  readonly line: ColonyOutlook | undefined;
  readonly units: UnitFormat;
}) {
  const { round } = words;
  if (hive.stop === 'to-do') return <span className="round-stop-todo">{round.stops['to-do']}</span>;
  if (hive.stop === 'begun' || line === undefined) {
    return (
      <span>
        {hive.stop === 'begun' ? <StateShape shape="unknown" /> : null} {round.stops[hive.stop]}
      </span>
    );
  }
  const { shape, text } = headlineOf(line, units);
  return (
    <span>
      <StateShape shape={shape} /> {text}
    </span>
  );
}
