import { DEADOUTS, type DeathCause } from '../tables/deadouts.gen.ts';

/** Signs of brood disease that the law of most places wants reported: they end the reading of the hive. */
const NOTIFIABLE = new Set(['sunken-greasy-caps', 'ropy-brood', 'hard-scales']);

export interface ProbableCause {
  /** Most probable first; they add up to 1. */
  readonly causes: readonly { readonly cause: DeathCause; readonly chanceFrac: number }[];
  /** The first of them where it is likely enough to be named. */
  readonly named: DeathCause | null;
  /** Signs that speak for the named cause, or where none is named for the first, and those against it. */
  readonly speakFor: readonly string[];
  readonly speakAgainst: readonly string[];
  /** Stop, close the hive, call the inspector: nothing is moved. */
  readonly notifiable: boolean;
}

/** Under 12 cases of 20 the word is "unsure". */
const NAMED_FROM = 0.6;

/**
 * Probable cause of a winter death from what was found in the hive.
 *
 * Signs are taken as independent given the cause; only those found count, for what was not looked for says nothing.
 *
 * found      keys of data/deadouts.csv, each once; others say nothing about a cause
 * equation   P(cause | found) ~ P(cause) * prod P(sign | cause)
 * validity   a reading aid: no table of such chances is published; they are ours and say so
 */
export function probableCause(found: readonly string[]): ProbableCause {
  const [prior, ...signs] = DEADOUTS;
  const seen = signs.filter(({ sign }) => found.includes(sign));
  const weights = Object.entries(prior!.chances).map(([cause, share]) => ({
    cause: cause as DeathCause,
    weight: seen.reduce((product, row) => product * row.chances[cause as DeathCause], share),
  }));
  const sum = weights.reduce((total, { weight }) => total + weight, 0);
  const causes = weights.map(({ cause, weight }) => ({ cause, chanceFrac: weight / sum })).sort((a, b) => b.chanceFrac - a.chanceFrac);
  const first = causes[0]!;
  // a sign speaks for a cause where it is found more often than in the mean of all causes
  const speaks = ({ chances }: (typeof seen)[number]) => {
    const mean = Object.entries(chances).reduce((total, [cause, chance]) => total + chance * prior!.chances[cause as DeathCause], 0);
    return chances[first.cause] > mean;
  };
  const notifiable = found.some((sign) => NOTIFIABLE.has(sign));
  return {
    causes,
    named: !notifiable && first.chanceFrac >= NAMED_FROM ? first.cause : null,
    speakFor: seen.filter(speaks).map(({ sign }) => sign),
    speakAgainst: seen.filter((row) => !speaks(row)).map(({ sign }) => sign),
    notifiable,
  };
}
