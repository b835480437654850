import { type BadInput, bad, good, inRange, type Result } from '../result/index.ts';
import { type BoxPart, type Build, type FrameDepth, type FramePart, type Part, partKeys, partOf } from '../tables/parts.ts';

/** One line of a build with the row of its part. */
export interface BuildLine<P extends Part = Part> {
  readonly part: P;
  readonly count: number;
  readonly massKg: number | null;
}

/** A build that was read and found possible. */
export interface BuildFacts {
  readonly lines: readonly BuildLine[];
  readonly boxes: readonly BuildLine<BoxPart>[];
  readonly frames: readonly BuildLine<FramePart>[];
  readonly boxCount: number;
  /** Frame places of all boxes, less those a frame feeder takes. */
  readonly framePlaces: number;
  readonly frameCount: number;
  /** Outside length and width of the widest box [m]. */
  readonly lengthM: number;
  readonly widthM: number;
}

/** Shallower frames hang in deeper boxes, never the other way round. */
const DEPTHS: readonly FrameDepth[] = ['deep', 'medium', 'shallow'];
const MOST_BOXES = 6;

/**
 * Reads a list of parts against the parts table.
 *
 * field     name of the input field, for the error
 * returns   what the hive is made of; or what cannot be: an unknown part, a count or a mass out of range, no box, boxes of
 *           different widths, more frames than the boxes hold
 */
export function readBuild(build: Build, field = 'build'): Result<BuildFacts> {
  const lines: BuildLine[] = [];
  for (const [i, { part: key, count, massKg }] of build.entries()) {
    const part = partOf(key);
    if (part === undefined) return bad({ kind: 'unknown-choice', field: `${field}[${i}].part`, value: String(key), choices: partKeys() });
    const counted = inRange(`${field}[${i}].count`, count, { low: 0, high: part.kind === 'frame' ? 60 : MOST_BOXES, unit: '' });
    if (!counted.ok) return counted;
    if (!Number.isInteger(count))
      return bad({ kind: 'implausible', field: `${field}[${i}].count`, value: count, unit: '', why: 'not-whole' });
    if (massKg !== undefined) {
      const weighed = inRange(`${field}[${i}].massKg`, massKg, { low: 0.05, high: 30, unit: 'kg' });
      if (!weighed.ok) return weighed;
    }
    if (count > 0) lines.push({ part, count, massKg: massKg ?? null });
  }
  const boxes = lines.filter((line): line is BuildLine<BoxPart> => line.part.kind === 'box');
  const frames = lines.filter((line): line is BuildLine<FramePart> => line.part.kind === 'frame');
  const boxCount = total(boxes);
  if (boxCount === 0) return bad({ kind: 'missing', field: `${field} (a box)` });
  const facts: BuildFacts = {
    lines,
    boxes,
    frames,
    boxCount,
    framePlaces: boxes.reduce((sum, { part, count }) => sum + part.framesFit * count, 0) - placesTaken(lines),
    frameCount: total(frames),
    lengthM: Math.max(...boxes.map(({ part }) => part.outsideLengthM)),
    widthM: Math.max(...boxes.map(({ part }) => part.outsideWidthM)),
  };
  const wrong = impossible(facts, field);
  return wrong ? bad(wrong) : good(facts);
}

function impossible({ boxes, frames, boxCount, framePlaces }: BuildFacts, field: string): BadInput | null {
  if (boxCount > MOST_BOXES)
    return { kind: 'out-of-range', field: `${field} (boxes)`, value: boxCount, unit: 'boxes', low: 1, high: MOST_BOXES };
  if (new Set(boxes.map(({ part }) => part.framesFit)).size > 1) {
    return { kind: 'conflict', fields: boxes.map(({ part }) => part.key), why: 'box-widths-differ' };
  }
  let places = 0;
  let hung = 0;
  for (const depth of DEPTHS) {
    places += boxes.filter(({ part }) => part.depth === depth).reduce((sum, { part, count }) => sum + part.framesFit * count, 0);
    hung += total(frames.filter(({ part }) => part.depth === depth));
    const room = Math.min(places, framePlaces);
    if (hung > room) return { kind: 'out-of-range', field: `${field} (frames, ${depth})`, value: hung, unit: 'frames', low: 0, high: room };
  }
  return null;
}

function placesTaken(lines: readonly BuildLine[]): number {
  return lines.reduce((sum, { part, count }) => sum + (part.kind === 'feeder' ? (part.framePlaces ?? 0) * count : 0), 0);
}

function total(lines: readonly BuildLine[]): number {
  return lines.reduce((sum, { count }) => sum + count, 0);
}
