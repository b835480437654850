import { epochDayOf, type Holding } from '@winterheft/core';
import type { Sign } from './sign-icons.tsx';

/** A sign noted today, and the record that says so. */
export interface NotedSign {
  readonly sign: Sign;
  readonly record: string;
}

export function signsOfToday(holding: Holding, colony: string, today: string): readonly NotedSign[] {
  const day = epochDayOf(today);
  const signs = holding.colonies.get(colony)?.signs ?? [];
  return signs.filter((one) => one.day === day).map(({ sign, record }) => ({ sign, record }));
}

export function isOn(today: readonly NotedSign[], sign: Sign): boolean {
  return today.some((one) => one.sign === sign);
}

/** Signs that cannot both be so on one day. */
const EXCLUDES: Partial<Record<Sign, Sign>> = { alive: 'silent', silent: 'alive' };

/** What a tap on a sign's key adds and takes back: on, off, and the one it excludes off. */
export function toggled(today: readonly NotedSign[], sign: Sign): { readonly add: readonly Sign[]; readonly take: readonly string[] } {
  const on = today.filter((one) => one.sign === sign).map(({ record }) => record);
  if (on.length > 0) return { add: [], take: on };
  return { add: [sign], take: today.filter((one) => one.sign === EXCLUDES[sign]).map(({ record }) => record) };
}
