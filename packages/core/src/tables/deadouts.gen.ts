// Made by scripts/compile-tables.mjs from data/deadouts.csv. Do not edit.
import type { Mark } from './types.ts';

export type DeathCause = 'starved' | 'mites' | 'moisture' | 'queen' | 'tooSmall' | 'mice';

/** Chance of finding a sign in a hive that died of each cause; the first row is how common the causes are. */
export interface DeadoutRow {
  readonly sign: string;
  readonly chances: Readonly<Record<DeathCause, number>>;
  readonly mark: Mark;
  readonly source: string;
  readonly note: string;
}

export const DEADOUTS: DeadoutRow[] = [
  { sign: 'prior', chances: { starved: 0.2, mites: 0.35, moisture: 0.1, queen: 0.2, tooSmall: 0.1, mice: 0.05 }, mark: 'JUDGEMENT', source: 'own-judgement', note: "ranks from loss surveys of cold countries: mites, queens, weak colonies and starvation first; shares by cause are not published" },
  { sign: 'heads-in-cells', chances: { starved: 0.8, mites: 0.15, moisture: 0.15, queen: 0.1, tooSmall: 0.35, mice: 0.1 }, mark: 'READ', source: 'deadout-signs', note: "heads in cells and a tiny cluster: starvation" },
  { sign: 'no-honey-near', chances: { starved: 0.9, mites: 0.2, moisture: 0.15, queen: 0.15, tooSmall: 0.3, mice: 0.2 }, mark: 'PRACTICE', source: 'own-judgement', note: "no sealed honey on or beside the combs of the cluster" },
  { sign: 'honey-left', chances: { starved: 0.2, mites: 0.85, moisture: 0.8, queen: 0.8, tooSmall: 0.75, mice: 0.5 }, mark: 'PRACTICE', source: 'own-judgement', note: "sealed honey left in the hive; a starved cluster can have some out of reach" },
  { sign: 'mite-specks', chances: { starved: 0.15, mites: 0.8, moisture: 0.15, queen: 0.2, tooSmall: 0.25, mice: 0.15 }, mark: 'READ', source: 'deadout-signs', note: "white specks of mites in cells of a hive that was strong in autumn" },
  { sign: 'few-bees-left', chances: { starved: 0.25, mites: 0.8, moisture: 0.25, queen: 0.5, tooSmall: 0.5, mice: 0.3 }, mark: 'READ', source: 'deadout-signs', note: "hardly any bees left, alive or dead, in a hive that was strong in autumn" },
  { sign: 'spotty-capped-brood', chances: { starved: 0.1, mites: 0.6, moisture: 0.1, queen: 0.2, tooSmall: 0.15, mice: 0.1 }, mark: 'PRACTICE', source: 'own-judgement', note: "a patch of capped brood, spotty or chewed out" },
  { sign: 'wet-and-mouldy', chances: { starved: 0.2, mites: 0.25, moisture: 0.85, queen: 0.25, tooSmall: 0.35, mice: 0.3 }, mark: 'PRACTICE', source: 'own-judgement', note: "wet dead bees, mould on combs, ice or water under the lid; mould also follows death" },
  { sign: 'streaks', chances: { starved: 0.2, mites: 0.25, moisture: 0.5, queen: 0.2, tooSmall: 0.3, mice: 0.2 }, mark: 'PRACTICE', source: 'own-judgement', note: "dysentery: streaks on combs and front" },
  { sign: 'no-queen-drone-brood', chances: { starved: 0.05, mites: 0.1, moisture: 0.05, queen: 0.7, tooSmall: 0.1, mice: 0.05 }, mark: 'PRACTICE', source: 'own-judgement', note: "drone brood in worker cells, or many eggs in a cell" },
  { sign: 'cluster-a-fist', chances: { starved: 0.35, mites: 0.4, moisture: 0.2, queen: 0.3, tooSmall: 0.85, mice: 0.15 }, mark: 'PRACTICE', source: 'own-judgement', note: "a cluster no bigger than a fist" },
  { sign: 'gnawed', chances: { starved: 0.02, mites: 0.02, moisture: 0.02, queen: 0.02, tooSmall: 0.02, mice: 0.95 }, mark: 'PRACTICE', source: 'own-judgement', note: "gnawed combs, droppings, a nest" },
];
