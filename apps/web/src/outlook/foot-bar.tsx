import type { ColonyOutlook } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import type { Outlooks } from '../plan/use-plan.ts';
import { Icon } from '../ui/icons.tsx';
import { StateShape } from '../ui/states.tsx';
import { chanceLine, figuresOf, rowSentence, verdictOf } from '../verdict/figures.ts';
import { groupOf, shapeOf } from '../verdict/groups.ts';

interface Chosen {
  readonly made: Outlooks['made'];
  readonly units: UnitFormat;
}

interface FootProps extends Chosen {
  readonly lines: readonly ColonyOutlook[];
  readonly current: ColonyOutlook;
  readonly yardOf: (line: ColonyOutlook) => string | null;
  readonly sun: boolean;
  readonly onChoose: (colony: string) => void;
}

/** Steps row by row with keys that a glove hits; its middle opens the colony. */
export function FootBar({ lines, current, made, units, yardOf, sun, onChoose }: FootProps) {
  const { outlook } = words;
  const shown = sun ? lines.filter((line) => !['enough', 'spare'].includes(groupOf(line))) : lines;
  const at = shown.indexOf(current);
  const above = shown[at - 1];
  const below = shown[at + 1];
  return (
    <div className="outlook-foot">
      <button
        type="button"
        className="foot-key"
        aria-label={outlook.previous}
        disabled={above === undefined}
        onClick={() => above && onChoose(above.colony)}
      >
        <Icon name="up" size={28} />
      </button>
      <a className="foot-middle" href={`#/colony/${encodeURIComponent(current.colony)}`}>
        <span className="visually-hidden">
          {outlook.openColony(rowSentence(current, { units, certaintyFrac: made.certaintyFrac, to: made.to, yard: yardOf(current) }))}
        </span>
        <span aria-hidden="true">
          <strong>
            <StateShape shape={shapeOf(current)} size={18} />
            <span className="num">{current.label}</span> {verdictOf(current, figuresOf(current, units))}
          </strong>
          <small>{chanceLine(current, { certaintyFrac: made.certaintyFrac, to: made.to }) || outlook.next.weigh}</small>
        </span>
      </a>
      <button
        type="button"
        className="foot-key"
        aria-label={outlook.following}
        disabled={below === undefined}
        onClick={() => below && onChoose(below.colony)}
      >
        <Icon name="down" size={28} />
      </button>
    </div>
  );
}

/** The same for the desk: what the chosen row says, and the way to it. */
export function OpenChosen({ line, made, units, yard }: Chosen & { readonly line: ColonyOutlook; readonly yard: string | null }) {
  return (
    <p className="outlook-chosen">
      {rowSentence(line, { units, certaintyFrac: made.certaintyFrac, to: made.to, yard })}{' '}
      <a href={`#/colony/${encodeURIComponent(line.colony)}`}>{words.outlook.openIt(line.label)}</a>
    </p>
  );
}
