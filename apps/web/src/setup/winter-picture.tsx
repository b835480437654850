import './setup.css';
import { epochDayOf, fahrenheitToC, winterOf } from '@winterheft/core';
import { dayMonth, dayMonthOf, monthName, type UnitFormat } from '@winterheft/words';
import { useEffect, useState } from 'react';
import { report } from '../app/session.ts';
import { todayIso } from '../app/today.ts';
import { useUnits } from '../app/use-units.ts';
import { words } from '../app/words.ts';
import { work } from '../background/client.ts';
import type { PlaceWinter } from '../background/place-winter.ts';
import { useWidth } from '../ui/use-width.ts';

interface Where {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevM: number | null;
}

/** The year is drawn from mid-August to the end of June, days counted from 1 January of the winter's first year. */
const FIRST_DAY = 226;
const LAST_DAY = 365 + 181;
const COLDER_ONE_IN_TWENTY = 1.645;
/** Low on a phone, so that the answers below it are seen; taller where there is room. */
const heightFor = (width: number) => (width < 560 ? 216 : 380);

/** The first picture: the keeper's own winter, with the two dates between which the bees live on what they hold. */
export function WinterPicture({ place, units }: { readonly place: Where; readonly units?: UnitFormat }) {
  const set = useUnits();
  const { latDeg, lonDeg, elevM } = place;
  const [winter, setWinter] = useState<PlaceWinter | null>(null);
  useEffect(() => {
    let current = true;
    const ask = async () => {
      const answer = await (await work()).winterAt({ latDeg, lonDeg, elevM }, thisWinter());
      if (current && answer.ok) setWinter(answer.value);
    };
    ask().catch(report);
    return () => {
      current = false;
    };
  }, [latDeg, lonDeg, elevM]);
  const { begin } = words;
  return (
    <figure className="winter-picture">
      <figcaption className="visually-hidden">{begin.winterTitle}</figcaption>
      {winter === null ? <div style={{ height: heightFor(0) }} /> : <Drawing winter={winter} units={units ?? set} />}
    </figure>
  );
}

function thisWinter(): number {
  return winterOf(epochDayOf(todayIso()) as number);
}

function Drawing({ winter, units }: { readonly winter: PlaceWinter; readonly units: UnitFormat }) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const { begin } = words;
  const feeding = winter.lastFeedingDay.p50;
  const forage = winter.firstForage.p50;
  const days = feeding === null || forage === null ? null : (epochDayOf(forage) as number) - (epochDayOf(feeding) as number);
  const coldest = coldestOf(winter);
  const span = days === null ? '' : begin.winterSpan(dayMonth(feeding as string), dayMonth(forage as string), days);
  const { climate } = winter;
  const from = climate.from.map((source) => source.place.replace(/ [A-Z]{2}$/, '')).join(', ');
  return (
    <>
      <div ref={ref} role="img" aria-label={begin.winterPicture(roundTemp(coldest.meanC, units), dayMonthOf(coldest.epochDay), span)}>
        {width === 0 ? null : <Curve winter={winter} units={units} width={width} days={days} coldest={coldest} />}
      </div>
      <p className="note">{begin.winterNote(from, spreadTemp(climate.placeErrorSdC, units), datesIn(winter))}</p>
    </>
  );
}

interface Coldest {
  readonly day: number;
  readonly epochDay: number;
  readonly meanC: number;
  readonly edgeC: number;
}

function coldestOf({ dailyMeanC, dailySdC }: PlaceWinter): Coldest {
  let day = FIRST_DAY;
  for (let d = FIRST_DAY; d <= LAST_DAY; d++) if (of(dailyMeanC, d) < of(dailyMeanC, day)) day = d;
  const meanC = of(dailyMeanC, day);
  const january = epochDayOf(`${thisWinter()}-01-01`) as number;
  return { day, epochDay: january + day, meanC, edgeC: meanC - COLDER_ONE_IN_TWENTY * of(dailySdC, day) };
}

const of = (year: Float64Array, day: number): number => year[day % 365] as number;
const roundTemp = (tempC: number, units: UnitFormat) => `${String(Math.round(units.tempOf(tempC))).replace('-', '−')} ${units.tempUnit}`;
const spreadTemp = (sdC: number, units: UnitFormat) => `${(units.tempOf(sdC) - units.tempOf(0)).toFixed(1)} ${units.tempUnit}`;

function datesIn({ lastFeedingDay: feeding, firstForage: forage }: PlaceWinter): string {
  const all = [feeding.p10, feeding.p90, forage.p10, forage.p90];
  if (all.some((day) => day === null)) return '';
  const [a, b, c, d] = (all as string[]).map((day) => dayMonth(day)) as [string, string, string, string];
  return words.begin.winterDates(a, b, c, d);
}

function Curve({
  winter,
  units,
  width,
  days,
  coldest,
}: {
  readonly winter: PlaceWinter;
  readonly units: UnitFormat;
  readonly width: number;
  readonly days: number | null;
  readonly coldest: Coldest;
}) {
  const { begin } = words;
  const height = heightFor(width);
  const topC = Math.max(16, of(winter.dailyMeanC, LAST_DAY) + 1, of(winter.dailyMeanC, FIRST_DAY) + 1);
  const bottomC = Math.min(-12, coldest.edgeC - 2);
  const plotTop = 44;
  const plotBottom = height - 24;
  const x = (day: number) => ((day - FIRST_DAY) / (LAST_DAY - FIRST_DAY)) * width;
  const y = (tempC: number) => plotTop + ((topC - tempC) / (topC - bottomC)) * (plotBottom - plotTop);
  const steps = Array.from({ length: Math.floor((LAST_DAY - FIRST_DAY) / 3) + 1 }, (_, i) => FIRST_DAY + 3 * i);
  const point = (day: number, tempC: number) => `${x(day).toFixed(1)} ${y(tempC).toFixed(1)}`;
  const mean = steps.map((day) => point(day, of(winter.dailyMeanC, day)));
  const cold = steps.map((day) => point(day, Math.min(0, of(winter.dailyMeanC, day))));
  const edge = steps.map((day) => point(day, Math.min(0, of(winter.dailyMeanC, day) - COLDER_ONE_IN_TWENTY * of(winter.dailySdC, day))));
  const zeroBack = `L${x(LAST_DAY).toFixed(1)} ${y(0).toFixed(1)} L0 ${y(0).toFixed(1)}Z`;
  const january = epochDayOf(`${thisWinter()}-01-01`) as number;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <path d={`M${edge.join('L')}${zeroBack}`} className="winter-edge" />
      <path d={`M${cold.join('L')}${zeroBack}`} className="winter-cold" />
      <path d={`M0 ${y(0)}H${width}`} className="winter-zero" />
      {ticksOf(bottomC, units).map(({ tempC, label }) => (
        <g key={label}>
          <path d={`M0 ${y(tempC)}H${width}`} className="winter-grid" />
          <text x="2" y={y(tempC) - 4}>
            {label}
          </text>
        </g>
      ))}
      <path d={`M${mean.join('L')}`} className="winter-mean" />
      {days === null ? null : (
        <text x={x(coldest.day)} y={y(0) + (y(coldest.meanC) - y(0)) * 0.42} className="winter-days" textAnchor="middle">
          {begin.daysBetween(days)}
        </text>
      )}
      <text x={x(coldest.day)} y={y(coldest.edgeC) - 5} textAnchor="middle">
        {begin.oneInTwenty(roundTemp(coldest.edgeC, units))}
      </text>
      <Flag
        iso={winter.lastFeedingDay.p50}
        name={begin.lastFeeding}
        side="right"
        at={(day) => [x(day - january), y(of(winter.dailyMeanC, day - january))]}
      />
      <Flag
        iso={winter.firstForage.p50}
        name={begin.firstForage}
        side="left"
        at={(day) => [x(day - january), y(of(winter.dailyMeanC, day - january))]}
      />
      {monthsShown().map(({ day, name }, i) =>
        width < 600 && i % 2 === 1 ? null : (
          <g key={day}>
            <path d={`M${x(day)} ${plotBottom + 2}v7`} className="winter-tick" />
            <text x={x(day) + 4} y={height - 6}>
              {name}
            </text>
          </g>
        ),
      )}
    </svg>
  );
}

function Flag({
  iso,
  name,
  side,
  at,
}: {
  readonly iso: string | null;
  readonly name: string;
  readonly side: 'left' | 'right';
  readonly at: (epochDay: number) => readonly [number, number];
}) {
  if (iso === null) return null;
  const [x, y] = at(epochDayOf(iso) as number);
  return (
    <g className="winter-flag">
      <path d={`M${x} ${y}V${side === 'right' ? 8 : 26}`} />
      <circle cx={x} cy={y} r="4.5" />
      <text x={side === 'right' ? x + 7 : x - 7} y={side === 'right' ? 18 : 36} textAnchor={side === 'right' ? 'start' : 'end'}>
        {name} <tspan>{dayMonth(iso)}</tspan>
      </text>
    </g>
  );
}

/** Lines every twenty degrees Celsius or forty Fahrenheit, with freezing always among them. */
function ticksOf(bottomC: number, units: UnitFormat): readonly { readonly tempC: number; readonly label: string }[] {
  const isFahrenheit = units.tempUnit === '°F';
  const marks = isFahrenheit ? [32, 0, -40] : [0, -20, -40];
  return marks
    .map((mark, i) => ({
      tempC: isFahrenheit ? fahrenheitToC(mark) : mark,
      label: `${String(mark).replace('-', '−')}${i === 0 ? ` ${units.tempUnit}` : ''}`,
    }))
    .filter(({ tempC }) => tempC >= bottomC);
}

function monthsShown(): readonly { readonly day: number; readonly name: string }[] {
  const first = epochDayOf(`${thisWinter()}-01-01`) as number;
  const months: { day: number; name: string }[] = [];
  for (let month = 9; month <= 18; month++) {
    const iso = `${thisWinter() + (month > 12 ? 1 : 0)}-${String(((month - 1) % 12) + 1).padStart(2, '0')}-01`;
    months.push({ day: (epochDayOf(iso) as number) - first, name: monthName(((month - 1) % 12) + 1) });
  }
  return months;
}
