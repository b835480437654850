import type { ColonyOutlook, StoresFan, YardDates } from '@winterheft/core';
import { dayMonth, monthName, type UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import { useWidth } from '../ui/use-width.ts';
import { axisOf, monthMarks, needlesOf, xOf } from '../verdict/axis.ts';
import { massShown } from '../verdict/figures.ts';
import { textScale } from '../verdict/text-scale.ts';
import { WideTable } from '../verdict/wide-table.tsx';
import { bandPath, linePath, massMarks } from './fan.ts';

interface FanProps {
  readonly fan: StoresFan;
  readonly line: ColonyOutlook;
  readonly forage: YardDates['dates'][string] | undefined;
  readonly units: UnitFormat;
}

const HEIGHT = 250;
const FOOT = 24;
/** Width of the name of a month, and of the line about what is out of reach, at the usual size of text [px]. */
const NAME = 34;
const REACH = 200;

/** What is left of the stores from today on, the twenty needles where they end, and first forage. */
export default function FanPicture({ fan, line, forage, units }: FanProps) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const { colony } = words;
  const shares = colony.fan.shares;
  const middle = Math.floor(fan.days.length / 2);
  const at = (kg: readonly number[]) => massShown(kg[middle] as number, units);
  const sets = [fan.p5, fan.p25, fan.p50, fan.p75, fan.p95];
  return (
    <figure className="fan">
      <div ref={ref} role="img" aria-label={colony.fan.says(dayMonth(fan.days[middle] as string), at(fan.p5), at(fan.p50), at(fan.p95))}>
        {width === 0 ? <div style={{ height: HEIGHT }} /> : <Drawing fan={fan} line={line} forage={forage} units={units} width={width} />}
      </div>
      <figcaption className="note">{colony.fan.caption}</figcaption>
      <details>
        <summary>{colony.fan.table}</summary>
        <WideTable label={colony.fan.table}>
          <thead>
            <tr>
              <th scope="col">{colony.fan.week}</th>
              {shares.map((share) => (
                <th key={share} scope="col">
                  {share}, {units.massUnit}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {fan.days.map((day, i) =>
              i % 4 === 0 || i === fan.days.length - 1 ? (
                <tr key={day}>
                  <th scope="row">{dayMonth(day)}</th>
                  {sets.map((kg, s) => (
                    <td key={shares[s]}>{massShown(kg[i] as number, units).split(' ')[0]}</td>
                  ))}
                </tr>
              ) : null,
            )}
          </tbody>
        </WideTable>
      </details>
    </figure>
  );
}

function Drawing({ fan, line, forage, units, width }: FanProps & { readonly width: number }) {
  const { colony, outlook } = words;
  const first = fan.days[0] as string;
  const last = fan.days.at(-1) as string;
  const scale = textScale();
  const axis = axisOf(first, last, { left: 0, right: width });
  const mostKg = Math.max(...fan.p95) * 1.06;
  const bottom = HEIGHT - FOOT * scale;
  const y = (kg: number) => bottom - (kg / mostKg) * (bottom - 8);
  const frame = { axis, y };
  const { reserveKg } = line.needParts;
  const needles = needlesOf(axis, line.cases ?? [], line.chancesIn20 ?? 0);
  const foot = y(reserveKg);
  const spread =
    forage?.p10 == null ? null : { from: xOf(axis, forage.p10), to: Math.min(width, forage.p90 === null ? width : xOf(axis, forage.p90)) };
  const forageX = forage?.p50 == null || forage.p50 > last ? null : xOf(axis, forage.p50);
  return (
    <svg viewBox={`0 0 ${width} ${HEIGHT}`} width={width} height={HEIGHT} aria-hidden="true">
      <defs>
        <pattern id="fan-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V7" className="hatch" />
        </pattern>
      </defs>
      {spread === null ? null : (
        <rect className="forage-band" x={spread.from} y="8" width={Math.max(0, spread.to - spread.from)} height={bottom - 8} />
      )}
      <path className="fan-pale" d={bandPath(fan, fan.p5, fan.p95, frame)} />
      <path className="fan-dark" d={bandPath(fan, fan.p25, fan.p75, frame)} />
      {massMarks(units.massOf(mostKg)).map((mark) => {
        const height = bottom - (mark / units.massOf(mostKg)) * (bottom - 8);
        return (
          <g key={mark}>
            <path className="grid" d={`M0 ${height}H${width}`} />
            <text x={width - 2} y={height - 3} textAnchor="end">
              {mark}
            </text>
          </g>
        );
      })}
      <path className="fan-edge" d={linePath(fan, fan.p5, frame)} />
      <path className="fan-edge" d={linePath(fan, fan.p95, frame)} />
      <path className="fan-middle" d={linePath(fan, fan.p50, frame)} />
      <path className="fan-reach" d={`M0 ${foot}H${width}`} />
      {REACH * scale > width ? null : (
        <text className="fan-reach-label" x="3" y={foot - 5}>
          {colony.fan.reach(massShown(reserveKg, units))}
        </text>
      )}
      <path className="needle-short" d={needles.short.map((x) => `M${x.toFixed(1)} ${foot - 9}V${foot}`).join('')} />
      <path className="needle-tall" d={needles.tall.map((x) => `M${x.toFixed(1)} ${foot - 18}V${foot}`).join('')} />
      {forageX === null ? null : (
        <>
          <path className="forage-line" d={`M${forageX} 8V${bottom}`} />
          <text className="forage-label" x={forageX - 6} y="22" textAnchor="end">
            {outlook.forage} <tspan>{dayMonth(forage?.p50 as string)}</tspan>
          </text>
        </>
      )}
      <path className="fan-foot" d={`M0 ${bottom}H${width}`} />
      {monthMarks(axis, NAME * scale).map((mark) => (
        <g key={mark.x}>
          <path className="fan-foot" d={`M${mark.x} ${bottom}v5`} />
          {mark.named ? (
            <text x={Math.min(mark.x + 3, width)} y={HEIGHT - 6} textAnchor={mark.x + NAME * scale > width ? 'end' : 'start'}>
              {monthName(mark.month)}
            </text>
          ) : null}
        </g>
      ))}
    </svg>
  );
}
