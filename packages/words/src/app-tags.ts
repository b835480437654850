/** Tags for the hives, to be printed. */
export const tags = {
  title: 'Tags for the hives',
  none: 'No hive with a living colony stands here yet.',
  what: 'Each holds the short name of its yard and its hive, nothing else. The camera of a phone whose browser can read them opens the hive; the label above is for eyes.',
  how: 'Print at full size, cut along the lines, set under clear tape on the side you lift from, out of the sun. If two hives change places, their tags go with them.',
  yard: 'Which yard',
  allYards: 'all',
  print: (n: number) => `Print ${n} ${n === 1 ? 'tag' : 'tags'}`,
  code: (label: string) => `Code of ${label}`,
};
