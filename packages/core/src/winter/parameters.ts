import { normalQuantile } from '../chance/index.ts';
import { winterParameters } from '../tables/parameters-winter.gen.ts';
import type { Parameter } from '../tables/types.ts';

export type WinterName = keyof typeof winterParameters;

/** One value of every winter parameter: what a run of the model is a function of. */
export type WinterValues = Readonly<Record<WinterName, number>>;

/** 95 % point of the standard normal: `low` and `high` of a parameter lie so many sd from its value. */
const Z95 = 1.6448536269514722;

export const winterNames = Object.keys(winterParameters) as readonly WinterName[];

export function isWinterName(name: string): name is WinterName {
  return Object.hasOwn(winterParameters, name);
}

export function winterParameter(name: WinterName): Parameter {
  return winterParameters[name];
}

/** The central values, with those the caller pins put in their place. */
export function winterValues(fixed: Partial<Record<WinterName, number>> = {}): WinterValues {
  const values = {} as Record<WinterName, number>;
  for (const name of winterNames) values[name] = fixed[name] ?? winterParameters[name].value;
  return values;
}

/**
 * A drawn value of one parameter, as the row's own distribution has it: `low` and `high` are its 5 % and 95 % bounds.
 *
 * name      a winter parameter
 * u         draw between 0 and 1; 0.5 is the middle
 * pinned    the value it is pinned to, if any: then no draw moves it
 */
export function drawWinter(name: WinterName, u: number, pinned?: number): number {
  if (pinned !== undefined) return pinned;
  const { value, low, high, distribution } = winterParameter(name);
  switch (distribution) {
    case 'fixed':
      return value;
    case 'normal':
      return value + (normalQuantile(u) * (high - low)) / (2 * Z95);
    case 'lognormal':
      return value * Math.exp((normalQuantile(u) * Math.log(high / low)) / (2 * Z95));
    case 'uniform':
      return low + ((u - 0.05) / 0.9) * (high - low);
  }
}
