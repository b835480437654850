import type { Group, GroupName } from '../verdict/groups.ts';

/** Sizes at the usual size of text [px]. Rows of 16 px are read, not aimed at: a tap takes the nearest one. */
const ROW_LEAST = 16;
const ROW_MOST = 24;
const HEAD = 17;
const SLIVER_LEAST = 3;
const SLIVER_MOST = 6;
const SLIVER_SCROLLED = 4.6;
const SUN_ROW = 33;
const SUN_ROW_LEAST = 31;
const SUN_HEAD = 24;
/** What shrinks where not all fit: colonies that ask for nothing. */
const CAN_SHRINK: readonly GroupName[] = ['enough', 'spare'];

export interface PlacedHead {
  readonly name: GroupName;
  readonly top: number;
  readonly height: number;
  /** Rows of the group are slivers. */
  readonly shrunk: boolean;
  /** The group can be opened or shut. */
  readonly folds: boolean;
}

export interface PlacedRow {
  readonly colony: string;
  readonly top: number;
  readonly height: number;
  readonly sliver: boolean;
}

export interface Layout {
  readonly heads: readonly PlacedHead[];
  readonly rows: readonly PlacedRow[];
  readonly height: number;
  /** More than what is there to see: the list scrolls under the axis. */
  readonly scrolls: boolean;
}

export interface Room {
  /** Height the rows may take [px]. */
  readonly height: number;
  /** Size of text against the usual one. */
  readonly scale: number;
  readonly sun: boolean;
  /** Figures stand in a line of their own over the needles. */
  readonly twoLines: boolean;
  /** Groups somebody has opened. */
  readonly opened: ReadonlySet<GroupName>;
  /** Height kept free below the rows [px]. */
  readonly below: number;
}

/** Sun mode shows only what asks for something. */
export function shownInSun(groups: readonly Group[]): readonly Group[] {
  return groups.filter((group) => !CAN_SHRINK.includes(group.name));
}

/**
 * Where every group and row stands.
 *
 * All rows in full where they fit; else the colonies that ask for nothing shrink to slivers, still to scale; else it scrolls.
 */
export function layOut(groups: readonly Group[], room: Room): Layout {
  const { scale, sun, twoLines } = room;
  const lines = twoLines ? 2 : 1;
  const head = (sun ? SUN_HEAD : HEAD) * scale;
  const count = (names: (name: GroupName) => boolean) => groups.reduce((n, group) => n + (names(group.name) ? group.lines.length : 0), 0);
  const free = room.height - groups.length * head - room.below;
  const least = ROW_LEAST * scale * lines;
  const most = ROW_MOST * scale * lines;
  const all = count(() => true);
  if (sun) {
    const fitting = free / Math.max(1, all);
    const row = fitting >= SUN_ROW_LEAST * scale * lines ? Math.min(fitting, SUN_ROW * scale * lines) : SUN_ROW * scale * lines;
    return place(groups, { head, row: () => row, shrunk: () => false, folds: () => false }, room);
  }
  const fits = all * least <= free;
  if (fits) {
    const row = Math.min(most, free / Math.max(1, all));
    return place(groups, { head, row: () => row, shrunk: () => false, folds: () => false }, room);
  }
  const shrunk = (name: GroupName) => CAN_SHRINK.includes(name) && !room.opened.has(name);
  const slivers = count(shrunk);
  const full = all - slivers;
  const each = (free - full * least * 1.1) / Math.max(1, slivers);
  const sliver = each < SLIVER_LEAST ? SLIVER_SCROLLED : Math.min(SLIVER_MOST, each);
  const row = Math.min(most, Math.max(least * 1.1, (free - slivers * sliver) / Math.max(1, full)));
  return place(groups, { head, row: (name) => (shrunk(name) ? sliver : row), shrunk, folds: (name) => CAN_SHRINK.includes(name) }, room);
}

interface Sizes {
  readonly head: number;
  readonly row: (name: GroupName) => number;
  readonly shrunk: (name: GroupName) => boolean;
  readonly folds: (name: GroupName) => boolean;
}

function place(groups: readonly Group[], sizes: Sizes, room: Room): Layout {
  const heads: PlacedHead[] = [];
  const rows: PlacedRow[] = [];
  let top = 0;
  for (const group of groups) {
    const shrunk = sizes.shrunk(group.name);
    heads.push({ name: group.name, top, height: sizes.head, shrunk, folds: sizes.folds(group.name) });
    top += sizes.head;
    const height = sizes.row(group.name);
    for (const line of group.lines) {
      rows.push({ colony: line.colony, top, height, sliver: shrunk });
      top += height;
    }
  }
  const height = top + room.below;
  return { heads, rows, height, scrolls: height > room.height + 1 };
}

/** The row whose middle is nearest to a height in the chart. */
export function nearestRow(rows: readonly PlacedRow[], y: number): PlacedRow | null {
  let nearest: PlacedRow | null = null;
  let best = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    const distance = Math.abs(row.top + row.height / 2 - y);
    if (distance < best) {
      best = distance;
      nearest = row;
    }
  }
  return nearest;
}
