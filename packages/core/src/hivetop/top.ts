import { dewPointC, frostPointC, waterSaturationPa } from '../matter/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import type { Assembly } from './assembly.ts';
import { BELOW, boundKg, LOWER_WALL, type Place, placesOf, settlesAtPa, UPPER_WALL } from './moisture.ts';
import { type ReadTop, readTop, TOP_RANGES } from './read-top.ts';
import { clusterHeatW, DAY_S, dryInsideC, heldAndFrozen, startTop, stepTop, type TopDay, type TopState, type TopStep } from './run.ts';
import type { TopAnswer, TopFill, TopInput, TopNote, TopPlace } from './top-types.ts';
import { FOAM_MEASURED_C, vapourUptake, WOOD_TABLE_FROM_C } from './uptake.ts';

/** Humidity at which vapour uptake is reckoned as capacity: nearly saturated air. */
const DAMP_RH = 0.97;
/** A face is called wet from a film of this thickness [kg/m2]: a twentieth of a millimetre is seen, a thousandth is not. */
const SEEN_KG_PER_M2 = 0.001;
/** Inside air beyond this is no winter hive, and water's heat may add a sixth before the formulas end [degC]. */
const WARMEST_INSIDE_C = 40;
const PATIENCE = { withinK: 1e-10, rounds: 400, withinFrac: 1e-10 };

/**
 * Heat and water through a hive's top over some days of one weather.
 *
 * Temperatures are those of steady days: wood holds little heat against a day. What stands wet, held or frozen builds up from day to day.
 *
 * input     see TopInput
 * returns   faces of the layers from the cluster up with dew and frost, dew point of the hive's air, where the water made went
 *           (the four shares add up to it), air through the openings; or what is wrong with the input
 * valid     still air outside; even temperature across each layer; see docs/model-top.md
 * checked   checks/hivetop.ts, hivetop.test.ts: by hand, limits, balances
 */
export function top(input: TopInput): Result<TopAnswer> {
  const day = readDay(input);
  if (!day.ok) return day;
  const days = inRange('days', input.days ?? 1, TOP_RANGES.days);
  if (!days.ok) return days;
  const read = readTop(input);
  if (!read.ok) return read;
  const warm = plausibleInside(read.value.assembly, day.value);
  if (!warm.ok) return warm;
  const state = startTop(read.value.assembly, day.value);
  const steps = Math.ceil(days.value - 1e-9);
  const seconds = (days.value * DAY_S) / steps;
  let step: TopStep | undefined;
  let fullDay: number | null = null;
  for (let d = 0; d < steps; d++) {
    step = stepTop(state, day.value, seconds, PATIENCE);
    if (fullDay === null && isFull(state, read.value)) fullDay = d + 1;
  }
  return good(answerOf(state, { read: read.value, step: step!, day: day.value, input, fullDay }));
}

function readDay(input: TopInput): Result<TopDay> {
  for (const field of ['outsideC', 'useKgPerDay'] as const) {
    const given = inRange(field, input[field], TOP_RANGES[field]);
    if (!given.ok) return given;
  }
  const rh = inRange('outsideRhFrac', input.outsideRhFrac ?? hivetopParameters.outsideRhFrac.value, TOP_RANGES.outsideRhFrac);
  if (!rh.ok) return rh;
  const heat = inRange('clusterHeatW', input.clusterHeatW ?? clusterHeatW(input.useKgPerDay), TOP_RANGES.clusterHeatW);
  if (!heat.ok) return heat;
  const candy = inRange('candyUseKgPerDay', input.candyUseKgPerDay ?? 0, { low: 0, high: input.useKgPerDay, unit: 'kg/day' });
  if (!candy.ok) return candy;
  const wind = inRange('windMPerS', input.windMPerS ?? 0, TOP_RANGES.windMPerS);
  if (!wind.ok) return wind;
  return good({
    outsideC: input.outsideC,
    windMPerS: wind.value,
    shedAboveC: null,
    outsideRhFrac: rh.value,
    useKgPerDay: input.useKgPerDay,
    clusterW: heat.value,
    candyUseKg: candy.value,
  });
}

/** Hotter than any bees would bear: the heat, or the build, is not that of a hive. */
function plausibleInside(assembly: Assembly, day: TopDay): Result<number> {
  const insideC = dryInsideC(assembly, day);
  return insideC <= WARMEST_INSIDE_C
    ? good(insideC)
    : bad({
        kind: 'implausible',
        field: 'clusterHeatW (air of the hive)',
        value: Math.round(insideC * 10) / 10,
        unit: '°C',
        why: 'hive-too-warm',
      });
}

/** Dry mass, what it holds, and whether it could take a drop more. */
function fillWater({ water }: TopState, { assembly, absorbent }: ReadTop) {
  let [kg, capacity] = [0, 0];
  assembly.nodes.forEach((node, i) => {
    if (absorbent === null || node.layer !== absorbent || node.kind !== 'slice') return;
    kg += water.kg[i + BELOW]!;
    capacity += node.capacityKg;
  });
  return { kg, capacity };
}

/** True once the absorbent can take up no more: all the liquid it can hold is in it. */
export function isFull(state: TopState, read: ReadTop): boolean {
  const { kg, capacity } = fillWater(state, read);
  return capacity > 0 && kg >= capacity * 0.999;
}

/** The absorbent as it stands: depth, room over it, what it holds and can hold. */
export function fillOf(state: TopState, read: ReadTop): TopFill | null {
  const { assembly, absorbent } = read;
  if (absorbent === null) return null;
  const { material, dryKg, thicknessM } = assembly.layers[absorbent]!;
  const next = assembly.layers[absorbent + 1];
  const { kg } = fillWater(state, read);
  const liquidCapacityKg = (material.liquidKgPerKg ?? 0) * dryKg;
  const full = Math.min(1, kg / liquidCapacityKg);
  return {
    material: material.key,
    dryKg,
    depthM: thicknessM,
    freeM: next?.material.kind === 'air' ? next.thicknessM : 0,
    swollenDepthM: thicknessM * (1 + ((material.swellFactor ?? 1) - 1) * full),
    heldKg: kg,
    vapourCapacityKg: dryKg * vapourUptake(material.isotherm, DAMP_RH, WOOD_TABLE_FROM_C)[0],
    liquidCapacityKg,
  };
}

/** Walls, corners, fill: their temperature, and whether water stands or hangs there. */
export function placesNow(state: TopState, read: ReadTop, outsideC: number): readonly TopPlace[] {
  const { assembly, climate, water } = state;
  const { shell } = assembly;
  const places = placesOf(assembly, climate, outsideC);
  const named = (place: TopPlace['place'], at: Place, i: number, seenKg: number): TopPlace => {
    const free = Math.max(0, water.kg[i]! - boundKg(at));
    return { place, tempC: at.tempC, wet: at.tempC >= 0 && free > seenKg, frost: at.tempC < 0 && free > seenKg, waterKg: free };
  };
  const cornerC = outsideC + shell.cornerShareFrac * (climate.tempsC[0]! - outsideC);
  const vapour = { tempC: cornerC, dryKg: 0, isotherm: 'none', air: false } as const;
  const settlesAtCorner = hivePressurePa(state) >= settlesAtPa(vapour);
  const fill = fillFrost(state, read);
  return [
    named('upper walls', places[UPPER_WALL]!, UPPER_WALL, SEEN_KG_PER_M2 * shell.upperWall.areaM2),
    named('lower walls', places[LOWER_WALL]!, LOWER_WALL, SEEN_KG_PER_M2 * shell.lowerWall.areaM2),
    { place: 'upper corners', tempC: cornerC, wet: settlesAtCorner && cornerC >= 0, frost: settlesAtCorner && cornerC < 0, waterKg: 0 },
    ...(fill === null ? [] : [fill]),
  ];
}

function fillFrost(state: TopState, { assembly, absorbent }: ReadTop): TopPlace | null {
  if (absorbent === null) return null;
  let [free, ice, coldest] = [0, 0, Number.POSITIVE_INFINITY];
  const places = placesOf(assembly, state.climate, 0);
  assembly.nodes.forEach((node, i) => {
    if (node.layer !== absorbent || node.kind !== 'slice') return;
    free += Math.max(0, state.water.kg[i + BELOW]! - boundKg(places[i + BELOW]!));
    ice += state.water.iceKg[i + BELOW]!;
    coldest = Math.min(coldest, node.dryKg > 0 ? state.climate.tempsC[i]! : coldest);
  });
  const seen = SEEN_KG_PER_M2 * assembly.shell.insideLengthM * assembly.shell.insideWidthM;
  return { place: 'fill', tempC: coldest, wet: free - ice > seen, frost: ice > seen, waterKg: free };
}

/** Vapour of the hive's air, from what its last step left. */
function hivePressurePa(state: TopState): number {
  return state.vapourPa[BELOW]!;
}

/** Whether a face of the stack is wet or frosted: water lies on it, or its vapour stands at saturation. */
export function faceState(state: TopState, node: number): { readonly wet: boolean; readonly frost: boolean; readonly waterKg: number } {
  const { assembly, climate, water } = state;
  const areaM2 = assembly.shell.insideLengthM * assembly.shell.insideWidthM;
  const tempC = climate.tempsC[node]!;
  const waterKg = assembly.nodes[node]!.kind === 'face' ? water.kg[node + BELOW]! : 0;
  const seen = waterKg > SEEN_KG_PER_M2 * areaM2;
  return { wet: seen && tempC >= 0, frost: seen && tempC < 0, waterKg };
}

function answerOf(state: TopState, of: { read: ReadTop; step: TopStep; day: TopDay; input: TopInput; fullDay: number | null }): TopAnswer {
  const { read, step, day, input, fullDay } = of;
  const { assembly, climate, sums } = state;
  const { heldKg, frozenKg } = heldAndFrozen(state);
  const given = assembly.layers.filter((layer) => layer.given !== null);
  const surfaces = assembly.lowerFace.map((node, i) => {
    const pa = Math.min(step.vapour.vapourPa[node + BELOW]!, waterSaturationPa(climate.tempsC[node]!));
    const layer = given[i]!;
    return {
      layer: layer.material.key,
      tempC: climate.tempsC[node]!,
      ...faceState(state, node),
      heightM: layer.lowM,
      dewPointC: dewPointC(pa),
      frostPointC: frostPointC(pa),
    };
  });
  const hivePa = hivePressurePa(state);
  return {
    surfaces,
    dewPointC: dewPointC(hivePa),
    frostPointC: frostPointC(hivePa),
    waterMadeKg: sums.madeKg,
    waterOutKg: sums.outKg,
    waterHeldKg: heldKg,
    waterFrozenKg: frozenKg,
    waterDrippedKg: sums.drippedKg,
    ranDownWallsKg: sums.ranDownKg,
    airflowKgPerS: step.airInKgPerS,
    insideC: climate.tempsC[0]!,
    places: placesNow(state, read, day.outsideC),
    heat: step.heat,
    fill: fillOf(state, read),
    absorbentFullDay: fullDay,
    candyLeftKg: state.candyAtStartKg > 0 ? state.candyKg : null,
    notes: notesOf(state, { read, step, day, input, full: fullDay !== null }),
  };
}

function notesOf(state: TopState, of: { read: ReadTop; step: TopStep; day: TopDay; input: TopInput; full: boolean }): readonly TopNote[] {
  const { read, step, day, input } = of;
  const { assembly, climate } = state;
  const expected = clusterHeatW(input.useKgPerDay);
  const notes: TopNote[] = [...read.notes];
  if (foamTooCold(assembly, climate.tempsC)) notes.push('foam-below-test-range');
  if (assembly.layers.some((layer) => layer.material.isotherm === 'wood') && Math.min(...climate.tempsC) < WOOD_TABLE_FROM_C)
    notes.push('wood-below-table');
  const count = assembly.cavities.reduce((sum, { openings }) => sum + openings.length, 0);
  if (count === 0) notes.push('no-opening');
  if (hasTwoWayOpening(assembly)) notes.push('two-way-opening');
  if (step.beesFan) notes.push('bees-fan-for-air');
  if (step.outsideAboveIce) notes.push('outside-air-above-ice');
  if (input.clusterHeatW !== undefined && (day.clusterW > 1.5 * expected || day.clusterW < 0.5 * expected))
    notes.push('heat-does-not-match-use');
  if (of.full) notes.push('absorbent-full');
  if (state.candyAtStartKg > 0 && day.candyUseKg > 0 && state.candyKg <= 0) notes.push('candy-eaten');
  return notes;
}

/** True where a foam's mean temperature is under the coldest it was tested at. */
export function foamTooCold({ layers, nodes }: Assembly, tempsC: ArrayLike<number>): boolean {
  return nodes.some(
    ({ kind, layer }, i) =>
      kind === 'slice' && layer !== null && layers[layer]!.material.kind === 'foam' && tempsC[i]! < FOAM_MEASURED_C[2],
  );
}

/** True where a set of connected cavities has one opening alone: it breathes both ways, by a coefficient made for doors. */
function hasTwoWayOpening({ cavities }: Assembly): boolean {
  let count = 0;
  return cavities.some(({ openings, upM3PerSPa }) => {
    count += openings.length;
    if (upM3PerSPa > 0) return false;
    const one = count === 1;
    count = 0;
    return one;
  });
}
