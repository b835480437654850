import type { ColonyOutlook, EndedColony } from '@winterheft/core';
import type { Shape } from '../ui/states.tsx';

/** What is to be done with a colony, in the order of the chart. */
const GROUPS = ['short', 'look', 'low', 'enough', 'spare'] as const;
export type GroupName = (typeof GROUPS)[number];

export interface Group {
  readonly name: GroupName;
  /** In order of risk. */
  readonly lines: readonly ColonyOutlook[];
}

/** Spare by weight, but nobody has looked at its brood: no comb may leave it yet. */
export function waitsForLook(line: ColonyOutlook): boolean {
  return line.state === 'spare' && line.notes.some((note) => note.code === 'brood-not-looked-at');
}

export function groupOf(line: ColonyOutlook): GroupName {
  if (line.state === 'short') return 'short';
  if (line.state === 'enough' || line.state === 'spare') {
    if (waitsForLook(line)) return 'look';
    return line.low ? 'low' : line.state;
  }
  return 'look';
}

/** The silhouette of a colony. */
export function shapeOf(line: ColonyOutlook): Shape {
  if (line.state === 'too small alone') return 'too-small-alone';
  if (line.state === 'set aside') return 'set-aside';
  if (waitsForLook(line)) return 'look';
  return line.low ? 'low' : line.state;
}

/** Groups that have a row, in the order of the chart; `lines` come in order of risk and stay in it. */
export function groupsOf(lines: readonly ColonyOutlook[]): readonly Group[] {
  return GROUPS.map((name) => ({ name, lines: lines.filter((line) => groupOf(line) === name) })).filter((group) => group.lines.length > 0);
}

/** Order as it stood when the screen was opened, with what came since at the end of it: nothing moves away under a finger. */
export function inOldOrder(groups: readonly Group[], order: ReadonlyMap<string, GroupName>): readonly Group[] {
  const ranks = new Map([...order.keys()].map((colony, rank) => [colony, rank]));
  const all = groups.flatMap((group) => group.lines.map((line) => ({ line, name: order.get(line.colony) ?? group.name })));
  const rank = (line: ColonyOutlook) => ranks.get(line.colony) ?? ranks.size;
  return GROUPS.map((name) => ({
    name,
    lines: all
      .filter((one) => one.name === name)
      .map((one) => one.line)
      .sort((a, b) => rank(a) - rank(b)),
  })).filter((group) => group.lines.length > 0);
}

/** The order to be kept. */
export function orderOf(groups: readonly Group[]): ReadonlyMap<string, GroupName> {
  return new Map(groups.flatMap((group) => group.lines.map((line) => [line.colony, group.name] as const)));
}

/** Chance to run out before forage is above what is allowed. Draws are counted, so a share equal to the asked one passes. */
export function isAtRisk(line: ColonyOutlook, certaintyFrac: number): boolean {
  return line.holdFrac !== null && line.holdFrac < certaintyFrac - 1e-9;
}

export interface Headline {
  readonly atRisk: number;
  readonly unknown: number;
  readonly all: number;
}

export function headlineOf(lines: readonly ColonyOutlook[], certaintyFrac: number): Headline {
  return {
    atRisk: lines.filter((line) => isAtRisk(line, certaintyFrac)).length,
    unknown: lines.filter((line) => line.holdFrac === null).length,
    all: lines.length,
  };
}

/** What is the next thing to do with a colony. */
export type Next = 'cover' | 'weigh' | 'unite' | 'shut' | 'look' | 'lift' | 'give' | null;

export function nextOf(line: ColonyOutlook): Next {
  if (line.state === 'set aside') return 'shut';
  if (line.state === 'unknown') return 'weigh';
  if (line.state === 'too small alone') return 'unite';
  if (line.state === 'short') return 'cover';
  if (waitsForLook(line)) return 'look';
  if (line.low) return 'lift';
  return line.state === 'spare' ? 'give' : null;
}

export const endedIn = (ended: readonly EndedColony[], yard: string | null): readonly EndedColony[] =>
  ended.filter((colony) => yard === null || colony.yard === yard);
