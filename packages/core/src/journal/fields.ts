import { choice, figures, flag, line, list, number, object, oneOf, pattern, type Shape, stepped, where } from './shape.ts';

/**
 * The parts record bodies are made of. Bounds refuse what cannot be (a hive as heavy as a car), not what is unlikely: judging a
 * plausible weight is the business of the stage that uses it. They are judgement, wide on purpose, and decide no result.
 */

/** Name of a thing in the holding: yard, stand, hive, colony, lot, scale. Not used for records, whose ids are UUIDs. */
export const id = pattern('id', /^[0-9A-Za-z][0-9A-Za-z._-]{0,59}$/);
/** Key of a row of a table: part, kind of frame, active ingredient, plant. */
export const key = pattern('key', /^[0-9A-Za-z][0-9A-Za-z._-]{0,59}$/);
export const shortLine = line(40);
export const longLine = line(400);

/** A single reading, a part or a whole hive [kg]. */
export const massKg = number(0.001, 300, 'kg');
/** What a scale can show at one edge of any hive under any geometry, in a record and on the command line; the hive weighed narrows it. */
export const EDGE_READING_KG = { low: 1, high: 150, unit: 'kg' } as const;
export const readingKg = number(EDGE_READING_KG.low, EDGE_READING_KG.high, EDGE_READING_KG.unit);
export const lengthM = number(-1, 2, 'm');
/** Frames, seams or boxes, in halves. */
export const halves = stepped(0.5, 0, 200, 'count');
export const wholes = stepped(1, 0, 10_000, 'count');
export const someWholes = stepped(1, 1, 10_000, 'count');

export const partCount = object({ part: key, count: stepped(1, 1, 200, 'count') });
export const parts = list(partCount, 1, 40);
export const frameCount = object({ frame: key, count: stepped(0.5, 0.5, 200, 'frames') });
export const bees = object({
  count: stepped(0.5, 0, 60, 'frames or seams'),
  unit: choice(['frames', 'seams']),
  counting: choice(['covered', 'occupied', 'packed']),
});
export const queenState = choice(['seen', 'laying', 'absent', 'introduced', 'unknown']);

/** Where a frame comes from or goes to. In hand: on the cart, taken from the colony or lot named (or `shed`) and not yet placed. */
export type Place = { readonly colony: string } | { readonly lot: string } | { readonly shed: true } | { readonly hand: string };
export const place: Shape<Place> = oneOf<Place>({
  colony: object({ colony: id }),
  lot: object({ lot: id }),
  shed: where(object({ shed: flag }), (body, field) =>
    body.shed ? null : { kind: 'unknown-choice', field: `${field}.shed`, value: 'false', choices: ['true'] },
  ) as Shape<Place>,
  hand: object({ hand: id }),
});

export function isSamePlace(a: Place, b: Place): boolean {
  if ('colony' in a) return 'colony' in b && a.colony === b.colony;
  if ('lot' in a) return 'lot' in b && a.lot === b.lot;
  if ('hand' in a) return 'hand' in b && a.hand === b.hand;
  return 'shed' in b;
}

export const prices = figures(0, 100_000, 'price');
