import type { ScaleCourse, WatchLine } from '@winterheft/core';
import { dayMonth, monthName, type UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import { useWidth } from '../ui/use-width.ts';
import { type Axis, axisOf, monthMarks, needlesOf, xOf } from '../verdict/axis.ts';
import { textScale } from '../verdict/text-scale.ts';
import { shownMass } from './mass.ts';

const HEIGHT = 300;
const NAME = 34;

/**
 * One hive on the scale: the band that was said in autumn, the course as it is seen now, each lift as a bar with a hatch below it, for ice
 * only adds; on the foot the twenty needles where the stores end.
 */
export function ScalePicture({
  line,
  course,
  units,
}: {
  readonly line: WatchLine;
  readonly course: ScaleCourse;
  readonly units: UnitFormat;
}) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const { watch } = words;
  const middle = Math.floor(course.days.length / 2);
  const at = (spread: ScaleCourse['said'][number] | undefined) =>
    shownMass(spread?.p50 ?? 0, ((spread?.p95 ?? 0) - (spread?.p5 ?? 0)) / 3.29, units);
  return (
    <figure className="scale-course">
      <figcaption>
        <strong>{watch.chosen(line.label)}</strong>
      </figcaption>
      <div
        ref={ref}
        role="img"
        aria-label={watch.pictureSays(line.label, at(course.said[middle]), at(course.now[middle]), dayMonth(course.days[middle] ?? ''))}
      >
        {width === 0 ? <div style={{ height: HEIGHT }} /> : <Drawing line={line} course={course} units={units} width={width} />}
      </div>
      {line.lifts.length === 0 ? null : <p className="note">{watch.ice(shownMass(line.lifts[0]?.iceKg ?? 0, null, units))}</p>}
    </figure>
  );
}

interface DrawingProps {
  readonly line: WatchLine;
  readonly course: ScaleCourse;
  readonly units: UnitFormat;
  readonly width: number;
}

function Drawing({ line, course, units, width }: DrawingProps) {
  const { watch } = words;
  const scale = textScale();
  const axis = axisOf(course.days[0] as string, course.days.at(-1) as string, { left: 2, right: width - 2 });
  const foot = HEIGHT - 24 * scale;
  const emptyKg = line.empty?.kg ?? 0;
  const mostKg = Math.max(...course.said.map(({ p95 }) => p95), ...line.lifts.map(({ grossKg }) => grossKg));
  const leastKg = emptyKg - 0.06 * (mostKg - emptyKg);
  const ground = foot - 40;
  const y = (kg: number) => 16 + ((mostKg - kg) / (mostKg - leastKg)) * (ground - 16);
  const needles = needlesOf(axis, course.cases, course.chancesIn20);
  const point = (i: number, kg: number) => `${xOf(axis, course.days[i] as string).toFixed(1)} ${y(kg).toFixed(1)}`;
  const path = (kg: readonly number[]) => `M${kg.map((value, i) => point(i, value)).join('L')}`;
  const { said, now } = course;
  const band = `${path(said.map(({ p95 }) => p95))}L${said
    .map(({ p5 }, i) => point(i, p5))
    .reverse()
    .join('L')}Z`;
  const quarter = Math.floor(course.days.length / 4);
  return (
    <svg viewBox={`0 0 ${width} ${HEIGHT}`} width={width} height={HEIGHT} aria-hidden="true">
      <defs>
        <pattern id="ice-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V6" className="hatch" />
        </pattern>
      </defs>
      <path className="course-band" d={band} />
      <path className="course-said" d={path(said.map(({ p50 }) => p50))} />
      <path className="course-now" d={path(now.map(({ p50 }) => p50))} />
      <text className="course-said-name" x={xOf(axis, course.days[quarter] as string)} y={Math.max(12, y(said[quarter]?.p95 ?? 0) - 6)}>
        {watch.said}
      </text>
      <path className="course-empty" d={`M0 ${y(emptyKg)}H${width}`} />
      <text x="4" y={y(emptyKg) - 5}>
        {watch.empty(shownMass(emptyKg, line.empty?.sdKg ?? null, units))}
      </text>
      {line.lifts.map(({ on, grossKg, iceKg }) => (
        <g key={`${on} ${grossKg}`}>
          <rect
            className="course-ice"
            x={xOf(axis, on) - 8}
            y={y(grossKg)}
            width="16"
            height={y(grossKg - iceKg) - y(grossKg)}
            fill="url(#ice-hatch)"
          />
          <path className="course-lift" d={`M${xOf(axis, on) - 9} ${y(grossKg)}h18`} />
        </g>
      ))}
      <path className="needle-short" d={needles.short.map((x) => `M${x.toFixed(1)} ${foot - 9}V${foot}`).join('')} />
      <path className="needle-tall" d={needles.tall.map((x) => `M${x.toFixed(1)} ${foot - 24}V${foot}`).join('')} />
      <Months axis={axis} foot={foot} scale={scale} />
    </svg>
  );
}

function Months({ axis, foot, scale }: { readonly axis: Axis; readonly foot: number; readonly scale: number }) {
  return (
    <>
      <path className="axis" d={`M${axis.left} ${foot}H${axis.right}`} />
      {monthMarks(axis, NAME * scale).map(({ x, month, named }) => (
        <g key={`${x}`}>
          <path className="axis" d={`M${x} ${foot}v5`} />
          {named ? (
            <text x={x + 3} y={foot + 17 * scale}>
              {monthName(month)}
            </text>
          ) : null}
        </g>
      ))}
    </>
  );
}
