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
  readonly onGo: (hive: string) => void;
  readonly onClose: () => void;
}

/** Every hive of the round in walking order with how far it is; and the way to the other screens. */
export function HiveList({ walk, current, currentLabel, units, onGo, onClose }: HiveListProps) {
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
      <button type="button" className="round-back" onClick={onClose}>
        <Icon name="back" /> {round.backToHive(currentLabel)}
      </button>
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
      <RoundLinks />
    </main>
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
