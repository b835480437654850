import type { Holding } from '@winterheft/core';

/** A weighing counts for the round that is under way when it is this young [days]: a round of many yards takes a weekend. */
export const ROUND_DAYS = 3;

/** `done` was weighed in this round, `begun` has something typed that is no record yet. */
type Stop = 'to-do' | 'begun' | 'done';

export interface WalkHive {
  readonly hive: string;
  readonly label: string;
  readonly colony: string;
  readonly yard: string;
  readonly stop: Stop;
}

export interface WalkYard {
  readonly yard: string;
  readonly name: string;
  readonly hives: readonly WalkHive[];
}

/** Labels as people count them: A2 before A10. */
const labels = new Intl.Collator('en', { numeric: true });

/**
 * The hives of a round, yard by yard, in the order of the stands: row, then place; hives without a stand follow by label.
 * Hives that are gone, and those no colony lives in, are not weighed.
 *
 * today    epoch day of the plan
 * begun    hives that have a draft with something in it
 */
export function walkOf(holding: Holding, today: number, begun: ReadonlySet<string>): readonly WalkYard[] {
  const yards = [...holding.yards.values()].map(({ id, name }) => ({ yard: id, name, hives: [] as (WalkHive & { at: Stood })[] }));
  const byYard = new Map(yards.map((yard) => [yard.yard, yard]));
  for (const hive of holding.hives.values()) {
    const colony = hive.colonies.at(-1);
    const yard = byYard.get(hive.yard);
    if (hive.gone || colony === undefined || yard === undefined) continue;
    const stand = hive.stand === null ? undefined : holding.stands.get(hive.stand);
    const label = hive.label ?? hive.id;
    const weighed = hive.weighings.some((weighing) => weighing.day <= today && today - weighing.day < ROUND_DAYS);
    yard.hives.push({
      hive: hive.id,
      label,
      colony,
      yard: hive.yard,
      stop: begun.has(hive.id) ? 'begun' : weighed ? 'done' : 'to-do',
      at: { row: stand?.row ?? null, place: stand?.place ?? 0, label },
    });
  }
  return yards
    .filter((yard) => yard.hives.length > 0)
    .map(({ hives, ...yard }) => ({ ...yard, hives: hives.sort((a, b) => inOrder(a.at, b.at)).map(({ at: _at, ...hive }) => hive) }));
}

interface Stood {
  readonly row: string | null;
  readonly place: number;
  readonly label: string;
}

function inOrder(a: Stood, b: Stood): number {
  if (a.row === null || b.row === null) {
    if (a.row !== b.row) return a.row === null ? 1 : -1;
    return labels.compare(a.label, b.label);
  }
  return labels.compare(a.row, b.row) || a.place - b.place || labels.compare(a.label, b.label);
}

/** The hive a round goes on with after this one: the next that is not done, round the yard, then in the other yards; null when all are. */
export function nextHive(walk: readonly WalkYard[], after: string): WalkHive | null {
  const at = walk.findIndex((yard) => yard.hives.some((hive) => hive.hive === after));
  const turned = at < 0 ? walk : [...walk.slice(at), ...walk.slice(0, at)];
  const here = turned[0]?.hives ?? [];
  const i = here.findIndex((hive) => hive.hive === after);
  const order = [...here.slice(i + 1), ...here.slice(0, Math.max(0, i)), ...turned.slice(1).flatMap((yard) => yard.hives)];
  return order.find((hive) => hive.stop !== 'done') ?? null;
}

/** Where a round opens: at the hive asked for, else where it was left, else at the first that is not done, else at the first. */
export function openingHive(walk: readonly WalkYard[], asked: string | undefined, left: string | null): WalkHive | null {
  const all = walk.flatMap((yard) => yard.hives);
  const find = (id: string | null | undefined) => all.find(({ hive, label }) => hive === id || label === id);
  return find(asked) ?? find(left) ?? all.find((hive) => hive.stop !== 'done') ?? all[0] ?? null;
}
