import type { StoresFan } from '@winterheft/core';
import { type Axis, xOf } from '../verdict/axis.ts';

export interface FanFrame {
  readonly axis: Axis;
  /** Height of a mass [px], the axis of days at 0 kg. */
  readonly y: (kg: number) => number;
}

/** A line through the masses of a fan. */
export function linePath(fan: StoresFan, kg: readonly number[], { axis, y }: FanFrame): string {
  return `M${fan.days.map((day, i) => `${xOf(axis, day).toFixed(1)} ${y(kg[i] as number).toFixed(1)}`).join('L')}`;
}

/** The area between two of them. */
export function bandPath(fan: StoresFan, low: readonly number[], high: readonly number[], { axis, y }: FanFrame): string {
  const point = (day: string, kg: number) => `${xOf(axis, day).toFixed(1)} ${y(kg).toFixed(1)}`;
  const over = fan.days.map((day, i) => point(day, high[i] as number));
  const back = fan.days.map((day, i) => point(day, low[i] as number)).reverse();
  return `M${[...over, ...back].join('L')}Z`;
}

/** Round marks of a mass axis in the units shown: four to six of them. */
export function massMarks(most: number): readonly number[] {
  const step = [1, 2, 5, 10, 20, 50, 100].find((size) => most / size <= 6) ?? 200;
  const marks: number[] = [];
  for (let mark = step; mark <= most; mark += step) marks.push(mark);
  return marks;
}
