import type { State } from '@winterheft/core';

const STATES: Record<State, string> = {
  enough: 'enough',
  short: 'short',
  spare: 'spare',
  unknown: 'unknown',
  'too small alone': 'too small alone',
  'set aside': 'set aside',
  ended: 'ended',
};

/** The state in words; *low* joins any of them. */
export function stateWords(state: State, low = false): string {
  return low ? `${STATES[state]}, low` : STATES[state];
}

/** A chance counted in twentieths, with a finer count near the ends where a twentieth would say none or all. */
export function chanceWords(frac: number): string {
  if (!(frac >= 0 && frac <= 1)) throw new RangeError(`chanceWords: frac is ${frac}, must be 0 to 1`);
  const chances = (n: number, of: number) => `${n} ${n === 1 ? 'chance' : 'chances'} in ${of}`;
  if (frac >= 0.025 && frac < 0.975) return chances(Math.round(frac * 20), 20);
  if (frac >= 0.005 && frac < 0.995) return chances(Math.round(frac * 100), 100);
  return frac < 0.5 ? 'less than 1 chance in 200' : 'more than 199 chances in 200';
}

/** The same in a narrow column. */
export function chanceShort(frac: number): string {
  return chanceWords(frac)
    .replace('less than ', '<')
    .replace('more than ', '>')
    .replace(/ chances? in /, ' in ');
}
