/**
 * The worlds of the study: how nature and keepers differ from what the product believes. Invented, fixed before the first result;
 * a change needs a note in worth/README.md.
 */
export interface WorldKind {
  readonly name: string;
  /** Use against bees to this power: 0 means that a big colony eats no more than a small one. */
  readonly sizeExponent: number;
  /** Use of every colony against the middle world. */
  readonly level: number;
  /** Share of springs that come late. */
  readonly lateSpringFrac: number;
  /** Spread of the empty hive's mass between keepers [kg]. */
  readonly tareSdKg: number;
  /** Share of keepers who have weighed one empty hive. */
  readonly tareKnownFrac: number;
  /** Share of readings with a wrong digit. */
  readonly misreadFrac: number;
}

const MIDDLE: WorldKind = {
  name: 'middle',
  sizeExponent: 0.5,
  level: 1,
  lateSpringFrac: 0.15,
  tareSdKg: 2.5,
  tareKnownFrac: 0.5,
  misreadFrac: 0.02,
};

export const worldKinds: readonly WorldKind[] = [
  MIDDLE,
  { ...MIDDLE, name: 'size tells much', sizeExponent: 0.8 },
  { ...MIDDLE, name: 'size tells nothing', sizeExponent: 0 },
  { ...MIDDLE, name: 'hungry', level: 1.25 },
  { ...MIDDLE, name: 'frugal', level: 0.8 },
  { ...MIDDLE, name: 'late springs', lateSpringFrac: 0.4 },
  { ...MIDDLE, name: 'bad weights', tareSdKg: 4, tareKnownFrac: 0, misreadFrac: 0.06 },
];
