import { dayMonth, monthName } from '@winterheft/words';
import { words } from '../app/words.ts';
import { type Axis, monthMarks, xOf } from '../verdict/axis.ts';
import type { Forage } from './frame.ts';
import type { Curve } from './temperature.ts';

interface AxisProps {
  readonly axis: Axis;
  readonly forage: Forage;
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly wide: boolean;
  readonly to: string;
  /** Daily means drawn over the months; null where there are none at hand. */
  readonly curve: Curve | null;
}

/** Width of the name of a month at the usual size of text [px]. */
const NAME = 23.5;
/** From the foot of the axis to above the names of the months, which no line crosses [px]. */
const NAMES_TOP = 20;

/** Months, forage date and, where it is known, the course of the mean temperature. Stays while the rows scroll under it. */
export function ChartAxis({ axis, forage, width, height, scale, wide, to, curve }: AxisProps) {
  const { outlook } = words;
  const first = forage.days[0];
  const last = forage.days.at(-1);
  const says = first === undefined || last === undefined ? outlook.forageAfter(dayMonth(to)) : `${outlook.forage} `;
  const at = last === undefined ? axis.right : Math.min(axis.right, xOf(axis, last));
  const spread =
    wide && forage.p10 !== null && forage.p90 !== null ? ` ${outlook.forageSpread(dayMonth(forage.p10), dayMonth(forage.p90))}` : '';
  const months = monthMarks(axis, NAME * scale);
  return (
    <svg className="chart-axis" viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      {curve === null ? null : (
        <g>
          <path className="curve-cold" d={curve.cold} />
          <path className="curve-zero" d={`M${axis.left} ${curve.zeroY}H${axis.right}`} />
          <path className="curve" d={curve.path} />
          <text className="curve-lowest" x={curve.lowestX} y={curve.lowestY} textAnchor="middle">
            {curve.lowest}
          </text>
        </g>
      )}
      {months.map((mark) => (
        <g key={mark.x}>
          <path className="grid" d={`M${mark.x} ${height - 5}V${height}`} />
          {mark.named ? (
            <text x={mark.x} y={height - 7} textAnchor={mark.x + NAME * scale > axis.right + 12 ? 'end' : 'start'}>
              {monthName(mark.month)}
            </text>
          ) : null}
        </g>
      ))}
      <text className="forage-label" x={at} y={13 * scale} textAnchor="end">
        {says}
        {first === undefined || last === undefined ? null : <tspan>{outlook.fromTo(dayMonth(first), dayMonth(last))}</tspan>}
        {spread}
      </text>
      {forage.days.map((day) => (
        <path key={day} className="forage-line" d={`M${xOf(axis, day)} ${17 * scale}V${height - NAMES_TOP * scale}`} />
      ))}
    </svg>
  );
}
