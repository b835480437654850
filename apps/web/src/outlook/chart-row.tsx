import type { ColonyOutlook } from '@winterheft/core';
import { type Axis, needlesOf, xOf } from '../verdict/axis.ts';
import { groupOf } from '../verdict/groups.ts';
import { POINT } from './frame.ts';
import type { PlacedRow } from './layout.ts';

interface RowProps {
  readonly line: ColonyOutlook;
  readonly row: PlacedRow;
  readonly axis: Axis;
  readonly twoLines: boolean;
}

/**
 * A colony's row drawn: the line holds until the first of its twenty cases ends, then it frays into needles. Tall before that case's
 * forage, short after it; the pale band from 5 % to 95 %; the dot at the middle case; a point where cases lie beyond the axis.
 */
export function RowDrawing({ line, row, axis, twoLines }: RowProps) {
  const base = row.top + row.height - (row.sliver ? 1 : 2);
  const top = twoLines && !row.sliver ? row.top + row.height * 0.5 : row.top + (row.sliver ? 0.5 : 2);
  const { cases } = line;
  if (cases === null) return <path className="holds holds-unknown" d={`M${axis.left} ${base}H${axis.right}`} />;
  const needles = needlesOf(axis, cases, line.chancesIn20 ?? 0);
  const first = needles.tall[0] ?? needles.short[0] ?? axis.right;
  const tallTop = top;
  const shortTop = base - (base - top) * 0.5;
  const bandTop = base - (base - top) * (row.sliver ? 0.7 : 0.84);
  const begins = line.runOut?.p5 ?? null;
  const end = line.runOut?.p95 ?? null;
  const middle = line.runOut?.p50 ?? null;
  const isOpen = needles.later > 0 || end === null;
  const bandFrom = begins === null ? null : xOf(axis, begins);
  const bandTo = end === null ? axis.right : Math.min(axis.right, xOf(axis, end));
  const risky = groupOf(line) === 'short';
  return (
    <g className={row.sliver ? 'sliver' : ''}>
      {bandFrom === null ? null : (
        <rect className="band" x={bandFrom} y={bandTop} width={Math.max(0, bandTo - bandFrom)} height={base - bandTop} />
      )}
      {isOpen ? (
        <path className="open-end" d={`M${axis.right} ${bandTop}l${POINT} ${(base - bandTop) / 2}l${-POINT} ${(base - bandTop) / 2}z`} />
      ) : null}
      <path className="needle-short" d={needles.short.map((x) => `M${x.toFixed(1)} ${shortTop}V${base}`).join('')} />
      <path className={risky ? 'holds holds-short' : 'holds'} d={`M${axis.left} ${base}H${first.toFixed(1)}`} />
      <path className="needle-tall" d={needles.tall.map((x) => `M${x.toFixed(1)} ${tallTop}V${base}`).join('')} />
      {middle === null || row.sliver ? null : <circle className="middle-case" cx={xOf(axis, middle)} cy={base} r="3" />}
    </g>
  );
}
