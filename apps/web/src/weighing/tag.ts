/** What a tag on a hive holds: the short names of its yard and its hive, and nothing else. */
interface Tag {
  readonly yard: string;
  readonly hive: string;
}

/** Names in these characters alone are written in capitals: a code of capitals and digits is smaller than one of letters. */
const CAPITALS = /^[0-9a-z.\-/]+$/;

export function tagText({ yard, hive }: Tag): string {
  const text = `${yard}/${hive}`;
  return CAPITALS.test(text) ? text.toUpperCase() : text;
}

/** What was read as the tag of one of these hives; null where it is none of theirs. */
export function tagRead<T extends Tag>(read: string, hives: readonly T[]): T | null {
  return hives.find((hive) => tagText(hive) === read.trim()) ?? null;
}
