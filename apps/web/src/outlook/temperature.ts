import type { UnitFormat } from '@winterheft/words';
import { useEffect, useState } from 'react';
import { report } from '../app/session.ts';
import { work } from '../background/client.ts';
import { type Axis, dayOf } from '../verdict/axis.ts';

interface Where {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevM: number | null;
}

/** Daily means of a yard's average year, from 1 January [degC]; null until they are there. */
export function useYardCurve(yard: Where | null, from: string): Float64Array | null {
  const [dailyMeanC, setDailyMeanC] = useState<Float64Array | null>(null);
  const latDeg = yard?.latDeg;
  const lonDeg = yard?.lonDeg;
  const elevM = yard?.elevM ?? null;
  const winter = Number(from.slice(0, 4));
  useEffect(() => {
    if (latDeg === undefined || lonDeg === undefined) return;
    let current = true;
    const ask = async () => {
      const answer = await (await work()).winterAt({ latDeg, lonDeg, elevM }, winter);
      if (current && answer.ok) setDailyMeanC(answer.value.dailyMeanC);
    };
    ask().catch(report);
    return () => {
      current = false;
    };
  }, [latDeg, lonDeg, elevM, winter]);
  return yard === null ? null : dailyMeanC;
}

export interface Curve {
  readonly path: string;
  /** The part below freezing, closed at the zero line. */
  readonly cold: string;
  readonly zeroY: number;
  readonly lowest: string;
  readonly lowestX: number;
  readonly lowestY: number;
}

const EVERY_DAYS = 4;

/** The course of the mean temperature on the axis, between two heights. */
export function curveOn(
  dailyMeanC: Float64Array,
  axis: Axis,
  of: { readonly units: UnitFormat; readonly top: number; readonly bottom: number },
): Curve {
  const january = dayOf(`${new Date(axis.fromDay * 86_400_000).getUTCFullYear()}-01-01`);
  const meanC = (day: number) => dailyMeanC[(((day - january) % 365) + 365) % 365] as number;
  const days: number[] = [];
  for (let day = axis.fromDay; day <= axis.toDay; day += EVERY_DAYS) days.push(day);
  const lowestDay = days.reduce((low, day) => (meanC(day) < meanC(low) ? day : low), axis.fromDay);
  const highC = Math.max(5, ...days.map(meanC));
  const lowC = Math.min(-2, meanC(lowestDay));
  const x = (day: number) => axis.left + ((day - axis.fromDay) / (axis.toDay - axis.fromDay)) * (axis.right - axis.left);
  const y = (tempC: number) => of.top + ((highC - tempC) / (highC - lowC)) * (of.bottom - of.top);
  const at = (day: number, tempC: number) => `${x(day).toFixed(1)} ${y(tempC).toFixed(1)}`;
  return {
    path: `M${days.map((day) => at(day, meanC(day))).join('L')}`,
    cold: `M${axis.left} ${y(0).toFixed(1)}L${days.map((day) => at(day, Math.min(0, meanC(day)))).join('L')}L${axis.right} ${y(0).toFixed(1)}Z`,
    zeroY: y(0),
    lowest: `${String(Math.round(of.units.tempOf(meanC(lowestDay)))).replace('-', '−')}°`,
    lowestX: x(lowestDay),
    lowestY: (y(0) + y(meanC(lowestDay))) / 2 + 5,
  };
}
