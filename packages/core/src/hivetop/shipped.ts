import { good, type Result } from '../result/index.ts';
import { topRows } from '../tables/materials.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import type { Build } from '../tables/parts.ts';
import { top } from './top.ts';
import type { TopAnswer, TopBuild, TopInput } from './top-types.ts';

export const SHIPPED_TOPS = ['vented-box', 'sealed-foam', 'both', 'bare-lid'] as const;
export type ShippedTop = (typeof SHIPPED_TOPS)[number];

/** A build of the table: its layers and openings. None is recommended over another. */
export function shippedTop(key: ShippedTop, hive?: Build): TopBuild {
  const rows = topRows().filter((row) => row.top === key);
  const openings = rows.flatMap(({ role, areaM2, heightM, tallM, count, piece }) => {
    if (role !== 'opening') return [];
    const freeFrac = piece === 'meshed vent' ? hivetopParameters.meshFreeFrac.value : 1;
    return Array.from({ length: count! }, () => ({ areaM2: areaM2! * freeFrac, heightM: heightM!, tallM }));
  });
  return {
    stack: rows.flatMap(({ role, material, thicknessM, coversFrac }) =>
      role === 'layer' ? [{ material: material!, thicknessM: thicknessM!, coversFrac }] : [],
    ),
    openings,
    ...(hive === undefined ? {} : { hive }),
  };
}

/** Day at which a top's conductance is reckoned: a usual winter day of a usual colony. */
const USUAL_DAY = { outsideC: -10, useKgPerDay: 0.045 } as const;

/**
 * Heat a hive with this top loses per kelvin between the air around the cluster and outside, air in and out included.
 *
 * returns   [W/K], what the winter model asks of a hive
 * valid     at -10 degC and a usual colony; it changes by a tenth over a winter
 */
export function topConductanceWPerK(build: TopBuild): Result<number> {
  const answer = top({ ...build, ...USUAL_DAY, windMPerS: hivetopParameters.seasonWindMPerS.value });
  return answer.ok ? good(conductanceOf(answer.value)) : answer;
}

function conductanceOf({ heat, insideC }: TopAnswer): number {
  return (heat.topW + heat.rimW + heat.wallsW + heat.belowW + heat.airW) / (insideC - USUAL_DAY.outsideC);
}

/** Answers of one top at several temperatures outside, for a table or a picture with a slider. */
export function topAtTemperatures(input: Omit<TopInput, 'outsideC'>, outsideC: readonly number[]): Result<readonly TopAnswer[]> {
  const answers: TopAnswer[] = [];
  for (const tempC of outsideC) {
    const answer = top({ ...input, outsideC: tempC });
    if (!answer.ok) return answer;
    answers.push(answer.value);
  }
  return good(answers);
}
