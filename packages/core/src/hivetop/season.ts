import { good, inRange, type Result } from '../result/index.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import type { Assembly } from './assembly.ts';
import { readTop, TOP_RANGES } from './read-top.ts';
import { clusterHeatW, DAY_S, heldAndFrozen, startTop, stepTop, type TopDay } from './run.ts';
import { faceState, fillOf, foamTooCold, isFull } from './top.ts';
import type { TopBuild, TopFill } from './top-types.ts';

/** Weather and use of a winter: rows are members, or one row of weather for all. Lengths members x days, rows x days. */
export interface TopSeasonInput {
  readonly days: number;
  readonly members: number;
  readonly rows: number;
  readonly tempC: Float64Array;
  readonly useKg: Float64Array;
  readonly outsideRhFrac?: number | undefined;
  /** Share of what is eaten that comes from candy in the stack while it lasts; default none. */
  readonly candyShareFrac?: number | undefined;
}

/** A top through every winter: values by member, at the end where not said. */
export interface TopSeasonRuns {
  readonly members: number;
  readonly days: number;
  readonly waterMadeKg: Float64Array;
  readonly waterOutKg: Float64Array;
  readonly waterHeldKg: Float64Array;
  readonly waterFrozenKg: Float64Array;
  readonly waterDrippedKg: Float64Array;
  /** Of what dripped, the part that ran down the walls. */
  readonly ranDownWallsKg: Float64Array;
  /** Most that hung as ice at once. */
  readonly mostFrozenKg: Float64Array;
  /** Days on which a lid over air was wet, frosted. */
  readonly wetLidDays: Float64Array;
  readonly frostLidDays: Float64Array;
  /** Index of the first day on which the absorbent could take no more; Infinity where that never came. */
  readonly absorbentFullIndex: Float64Array;
  /** Heat that left through the top and its rims, and with the air [MJ]. */
  readonly topHeatMJ: Float64Array;
  readonly airHeatMJ: Float64Array;
  readonly candyLeftKg: Float64Array;
  /** Water in wood, fill, drops and frost beyond the start: what a scale shows beside stores and bees [kg], members x days. */
  readonly onScaleKg: Float64Array;
  /** Days, of all members, on which a foam was colder than it was ever tested. */
  readonly coldFoamDays: number;
  /** Largest share of the heat and of the water that a run could not account for. */
  readonly unclosedFrac: number;
  readonly fill: TopFill | null;
}

const PATIENCE = { withinK: 0.03, rounds: 6, withinFrac: 1e-4 };

/** Runs a top through every member's winter, day by day. Errors as `top`. */
export function topSeason(build: TopBuild, input: TopSeasonInput): Result<TopSeasonRuns> {
  const read = readTop(build);
  if (!read.ok) return read;
  const rh = inRange('outsideRhFrac', input.outsideRhFrac ?? hivetopParameters.outsideRhFrac.value, TOP_RANGES.outsideRhFrac);
  if (!rh.ok) return rh;
  const share = inRange('candyShareFrac', input.candyShareFrac ?? 0, { low: 0, high: 1, unit: '' });
  if (!share.ok) return share;
  const { days, members, rows, tempC, useKg } = input;
  const zero = () => new Float64Array(members);
  const runs = {
    waterMadeKg: zero(),
    waterOutKg: zero(),
    waterHeldKg: zero(),
    waterFrozenKg: zero(),
    waterDrippedKg: zero(),
    ranDownWallsKg: zero(),
    mostFrozenKg: zero(),
    wetLidDays: zero(),
    frostLidDays: zero(),
    absorbentFullIndex: zero().fill(Number.POSITIVE_INFINITY),
    topHeatMJ: zero(),
    airHeatMJ: zero(),
    candyLeftKg: zero(),
    onScaleKg: new Float64Array(members * days),
  };
  const windMPerS = hivetopParameters.seasonWindMPerS.value;
  const shedAboveC = hivetopParameters.shedAboveC.value;
  const lids = lidFaces(read.value.assembly);
  let coldFoamDays = 0;
  let unclosedFrac = 0;
  let fill: TopFill | null = null;
  for (let m = 0; m < members; m++) {
    const dayOf = (d: number): TopDay => {
      const use = useKg[m * days + d]!;
      return {
        outsideC: tempC[(rows === 1 ? 0 : m * days) + d]!,
        outsideRhFrac: rh.value,
        useKgPerDay: use,
        clusterW: clusterHeatW(use),
        candyUseKg: use * share.value,
        windMPerS,
        shedAboveC,
      };
    };
    const state = startTop(read.value.assembly, dayOf(0));
    for (let d = 0; d < days; d++) {
      const { heat } = stepTop(state, dayOf(d), DAY_S, PATIENCE);
      const { heldKg, frozenKg } = heldAndFrozen(state);
      runs.onScaleKg[m * days + d] = heldKg + frozenKg;
      runs.mostFrozenKg[m] = Math.max(runs.mostFrozenKg[m]!, frozenKg);
      runs.topHeatMJ[m]! += ((heat.topW + heat.rimW) * DAY_S) / 1e6;
      runs.airHeatMJ[m]! += (heat.airW * DAY_S) / 1e6;
      const faces = lids.map((face) => faceState(state, face));
      if (faces.some(({ wet }) => wet)) runs.wetLidDays[m]!++;
      if (faces.some(({ frost }) => frost)) runs.frostLidDays[m]!++;
      if (runs.absorbentFullIndex[m] === Number.POSITIVE_INFINITY && isFull(state, read.value)) runs.absorbentFullIndex[m] = d;
      if (foamTooCold(read.value.assembly, state.climate.tempsC)) coldFoamDays++;
    }
    const { heldKg, frozenKg } = heldAndFrozen(state);
    const { sums } = state;
    runs.waterMadeKg[m] = sums.madeKg;
    runs.waterOutKg[m] = sums.outKg;
    runs.waterHeldKg[m] = heldKg;
    runs.waterFrozenKg[m] = frozenKg;
    runs.waterDrippedKg[m] = sums.drippedKg;
    runs.ranDownWallsKg[m] = sums.ranDownKg;
    runs.candyLeftKg[m] = state.candyKg;
    fill = fillOf(state, read.value);
    unclosedFrac = Math.max(unclosedFrac, waterUnclosed(state, heldKg + frozenKg), heatUnclosed(state));
  }
  return good({ members, days, ...runs, coldFoamDays, unclosedFrac, fill });
}

type State = ReturnType<typeof startTop>;

/** Share of the water made that is found nowhere. */
export function waterUnclosed({ sums }: State, storedKg: number): number {
  return sums.madeKg > 0 ? Math.abs(sums.madeKg - sums.outKg - sums.drippedKg - storedKg) / sums.madeKg : 0;
}

/** Share of the heat given that is found nowhere: cluster and water on one side, skin and air and what is still owed on the other. */
export function heatUnclosed({ sums, owedJ }: State): number {
  const owed = owedJ.reduce((sum, joule) => sum + joule, 0);
  return sums.heatInJ > 0 ? Math.abs(sums.heatInJ + sums.waterHeatJ - owed - sums.heatOutJ) / sums.heatInJ : 0;
}

/** Lower faces of what holds air back, with air under them: where drops hang over the bees. */
export function lidFaces({ nodes, layers }: Assembly): readonly number[] {
  return nodes.flatMap((node, i) => {
    if (node.kind !== 'face' || node.layer === null || nodes[i - 1]?.kind !== 'air') return [];
    return layers[node.layer]!.material.airPathM2 === undefined && layers[node.layer]!.coversFrac === 1 ? [i] : [];
  });
}
