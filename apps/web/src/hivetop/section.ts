import { type ShippedTop, shippedTop, type TopAnswer } from '@winterheft/core';

/** One layer as drawn: heights over the top bars [m], warmth of its lower face and what settles there. */
export interface DrawnLayer {
  readonly material: string;
  readonly lowM: number;
  readonly thicknessM: number;
  /** Share of its breadth that is there; a candy board leaves a way up. */
  readonly coversFrac: number;
  readonly tempC: number;
  /** Where water begins to settle: frost point below freezing, else dew point [degC]. */
  readonly settlesC: number;
  readonly wet: boolean;
  readonly frost: boolean;
}

/** Layers of a shipped top with what was reckoned for their lower faces, from the bees up. */
export function layersOf(key: ShippedTop, answer: TopAnswer): readonly DrawnLayer[] {
  return shippedTop(key).stack.map(({ material, thicknessM, coversFrac }, i) => {
    const face = answer.surfaces[i];
    if (face === undefined) throw new RangeError(`layersOf: no face for layer ${i}`);
    return {
      material,
      thicknessM,
      coversFrac: coversFrac ?? 1,
      lowM: face.heightM,
      tempC: face.tempC,
      settlesC: face.frostPointC ?? face.dewPointC,
      wet: face.wet,
      frost: face.frost,
    };
  });
}

/** Tens of degrees that hold every one of these, with room for their labels. */
export function tens(tempsC: readonly number[]): { readonly lowC: number; readonly highC: number; readonly marks: readonly number[] } {
  const lowC = Math.floor((Math.min(...tempsC) - 2) / 10) * 10;
  const highC = Math.ceil((Math.max(...tempsC) + 2) / 10) * 10;
  return { lowC, highC, marks: Array.from({ length: (highC - lowC) / 10 + 1 }, (_, i) => lowC + 10 * i) };
}

/** Middles of labels at least `gap` apart, in the same order, as near to where they belong as the space allows. */
export function apart(middles: readonly number[], gap: number, highest: number): readonly number[] {
  const placed: number[] = [];
  for (const y of middles) placed.push(Math.min(y, (placed.at(-1) ?? highest + gap) - gap));
  return placed;
}
