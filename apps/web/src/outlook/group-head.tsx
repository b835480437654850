import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import type { Outlooks } from '../plan/use-plan.ts';
import { StateShape } from '../ui/states.tsx';
import { limitWords, sumShown } from '../verdict/figures.ts';
import { type Group, headlineOf } from '../verdict/groups.ts';
import type { PlacedHead } from './layout.ts';

interface HeadProps {
  readonly head: PlacedHead;
  readonly group: Group;
  readonly left: number;
  readonly units: UnitFormat;
  readonly made: Outlooks['made'];
  readonly wide: boolean;
  readonly sun: boolean;
  /** Of all rows shown: more likely to run out than is asked for. */
  readonly atRisk: number;
  readonly onFold: () => void;
}

/** What is to be done with the rows below; with the count and a key where they are shrunk. */
export function GroupHead({ head, group, left, units, made, wide, sun, atRisk, onFold }: HeadProps) {
  const { outlook } = words;
  const text = headText(group, { units, certaintyFrac: made.certaintyFrac, wide, atRisk });
  const names = `${group.lines[0]?.label ?? ''}`;
  const span = head.shrunk ? `: ${outlook.fromTo(names, group.lines.at(-1)?.label ?? '')}` : '';
  return (
    <div className="group-head" style={{ top: head.top, height: head.height }}>
      {head.shrunk ? (
        <span className="group-count" aria-hidden="true">
          <StateShape shape={group.name === 'spare' ? 'spare' : 'enough'} size={11} />
          <b>{group.lines.length}</b>
        </span>
      ) : null}
      <h2 id={`group-${group.name}`} style={{ left: sun ? 0 : left + 3 }}>
        {text}
        {span}
      </h2>
      {head.folds ? (
        <button
          type="button"
          className="group-fold"
          onClick={onFold}
          aria-label={head.shrunk ? outlook.openLong(text) : outlook.shutLong(text)}
          aria-expanded={!head.shrunk}
        >
          {head.shrunk ? outlook.open : outlook.shut}
        </button>
      ) : null}
    </div>
  );
}

interface HeadOf {
  readonly units: UnitFormat;
  readonly certaintyFrac: number;
  readonly wide: boolean;
  readonly atRisk: number;
}

/** Where the headline counts colonies of more than one group, each says how many of them are its own. */
function headText(group: Group, of: HeadOf): string {
  const { groups, groupsShort } = words.outlook;
  const here = headlineOf(group.lines, of.certaintyFrac).atRisk;
  const text = groupText(group, of);
  return here === 0 || here === of.atRisk ? text : (of.wide ? groups : groupsShort).ofThose(text, here, of.atRisk);
}

function groupText(group: Group, of: HeadOf): string {
  const { groups, groupsShort } = words.outlook;
  const n = group.lines.length;
  const mass = sumShown(group.lines, of.units);
  const limit = limitWords(of.certaintyFrac);
  switch (group.name) {
    case 'short':
      return of.wide ? groups.short(n, mass) : groupsShort.short(mass);
    case 'look':
      return of.wide ? groups.look(n) : groupsShort.look();
    case 'low':
      return of.wide ? groups.low() : groupsShort.low();
    case 'enough':
      return of.wide ? groups.enough(limit) : groupsShort.enough(limit);
    case 'spare':
      return of.wide ? groups.spare(n, mass) : groupsShort.spare(mass);
  }
}
