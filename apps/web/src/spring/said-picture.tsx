import type { SaidGroup } from '@winterheft/core';
import { decimals } from '@winterheft/words';
import { words } from '../app/words.ts';

const percent = (frac: number) => `${decimals(100 * frac, 0)} %`;
const WIDTH = 320;
const HEIGHT = 66;

/** For each group a row of needles over the numbers of losses that were expected, and a bar where the number that came stands. */
export function SaidPicture({ groups }: { readonly groups: readonly SaidGroup[] }) {
  const { spring } = words;
  return (
    <>
      <ul className="said">
        {groups.map((group) => {
          const says = spring.groupSays(group.colonies, decimals(group.expected, 1), group.low, group.high, group.died);
          return (
            <li key={group.fromFrac}>
              <b>{spring.group(percent(group.fromFrac), percent(group.toFrac))}</b>
              <Row group={group} />
              <small>{says}</small>
            </li>
          );
        })}
      </ul>
      <p className="note">{spring.saidNote}</p>
    </>
  );
}

function Row({ group }: { readonly group: SaidGroup }) {
  const most = Math.max(group.high, group.died, 1);
  const x = (n: number) => 14 + (n / most) * (WIDTH - 28);
  const needles = casesOf(group.cases);
  return (
    <svg className="said-row" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <path className="axis" d={`M4 48H${WIDTH - 4}`} />
      <path className="needle-tall" d={needles.map(({ n, i, of }) => `M${(x(n) + (i - (of - 1) / 2) * 4).toFixed(1)} 20V48`).join('')} />
      <path className="said-came" d={`M${x(group.died) - 9} 48h18`} />
      {[...new Set([0, group.low, group.high, group.died, most])].map((n) => (
        <text key={n} x={x(n)} y={63} textAnchor="middle">
          {n}
        </text>
      ))}
    </svg>
  );
}

/** Needles of the same number stand side by side. */
function casesOf(cases: readonly number[]): { readonly n: number; readonly i: number; readonly of: number }[] {
  return cases.map((n, at) => ({
    n,
    i: cases.slice(0, at).filter((one) => one === n).length,
    of: cases.filter((one) => one === n).length,
  }));
}
