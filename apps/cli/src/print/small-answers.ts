import type { AirAnswer, CandyAnswer, HeftAnswer, SyrupAnswer, WashAnswer } from '@winterheft/core';
import { decimals, significant } from '@winterheft/words';
import type { View } from '../command.ts';
import { entry, facts, paragraph } from './layout.ts';

const percent = (frac: number, places = 1) => `${decimals(frac * 100, places)} %`;

export function heftTable(answer: HeftAnswer, { words, units }: View): string {
  const w = words.heft;
  return facts([
    [w.total, units.mass(answer.totalKg, answer.sdKg)],
    [w.basis, w[answer.basis]],
    ...(answer.targetFrontKg === undefined ? [] : [[w.targetFront, units.mass(answer.targetFrontKg, answer.targetFrontSdKg)] as const]),
    ...(answer.targetRearKg === undefined ? [] : [[w.targetRear, units.mass(answer.targetRearKg, answer.targetRearSdKg)] as const]),
  ]);
}

export function syrupTable(answer: SyrupAnswer, { words, units }: View): string {
  const w = words.syrup;
  const { low, mid, high } = answer.storesKg;
  const range = answer.saturationTempRangeC;
  const grains =
    answer.saturationTempC === null
      ? w.never
      : `${units.temp(answer.saturationTempC)}${range === null ? '' : ` (${w.relations(units.temp(range.low), units.temp(range.high))})`}`;
  return [
    facts([
      [w.strength, percent(answer.sugarFrac)],
      [w.density, units.density(answer.densityKgPerM3)],
      [w.volume, units.volume(answer.volumeL)],
      [w.sugar, units.mass(answer.sugarKg)],
      [w.water, units.mass(answer.waterKg)],
      [w.mass, units.mass(answer.massKg)],
      [w.stores, w.range(units.mass(low), units.mass(mid), units.mass(high))],
      [w.grainsBelow, grains],
    ]),
    ...(answer.storesExtrapolated ? [paragraph(w.extrapolated)] : []),
    ...(answer.supersaturated ? [paragraph(w.supersaturated)] : []),
    paragraph(w.feeding),
  ].join('\n');
}

export function candyTable(answer: CandyAnswer, { words, units }: View): string {
  const w = words.candy;
  return [
    facts([
      [w.sugar, units.mass(answer.sugarKg)],
      [w.water, units.mass(answer.waterKg)],
      [w.mass, units.mass(answer.massKg)],
      [w.volume, w.packing(units.volume(answer.volumeL))],
    ]),
    ...answer.cautions.map((code) => entry('-', w.cautions[code])),
  ].join('\n');
}

export function washTable(
  answer: WashAnswer,
  view: View & { readonly input: { readonly certaintyFrac: number; readonly thresholdFrac?: number | undefined } },
): string {
  const w = view.words.wash;
  const of = (frac: number) => decimals(frac * 100, 1);
  const ahead = answer.aheadMitesPerBee;
  return [
    facts([
      [w.rate, `${of(answer.rateFrac)} (${w.between(of(answer.lowFrac), of(answer.highFrac), percent(view.input.certaintyFrac, 0))})`],
      [w.interval, w.intervals[answer.interval]],
      ...(answer.chanceAboveFrac === undefined || answer.decision === undefined
        ? []
        : [
            [
              w.above(of(view.input.thresholdFrac ?? 0)),
              `${view.words.chanceWords(answer.chanceAboveFrac)}: ${w.decisions[answer.decision]}`,
            ] as const,
          ]),
      ...(ahead === undefined ? [] : [[w.ahead, w.aheadRange(of(ahead.low), of(ahead.mid), of(ahead.high))] as const]),
    ]),
    ...answer.notes.map((code) => paragraph(w.notes[code])),
    ...(answer.insteadMites === undefined ? [] : [paragraph(w.instead(answer.insteadMites.map(String)))]),
    paragraph(w.caution),
  ].join('\n');
}

export function airTable(answer: AirAnswer, { words, units }: View): string {
  const w = words.air;
  const pressure = (pa: number) => `${significant(pa, 4)} Pa`;
  const ice = answer.rhIceFrac === null ? '' : `, ${w.ofIce(percent(answer.rhIceFrac))}`;
  return [
    facts([
      [w.vapour, pressure(answer.vapourPa)],
      [w.rh, `${w.ofWater(percent(answer.rhFrac))}${ice}`],
      [w.saturationWater, pressure(answer.saturationWaterPa)],
      [w.saturationIce, answer.saturationIcePa === null ? w.noIce : pressure(answer.saturationIcePa)],
      [w.dewPoint, units.temp(answer.dewPointC)],
      [w.frostPoint, answer.frostPointC === null ? w.dewFirst : units.temp(answer.frostPointC)],
      [w.humidityRatio, `${significant(answer.humidityRatio * 1000, 4)} g/kg`],
      [w.density, `${decimals(answer.densityKgPerM3, 4)} kg/m³`],
    ]),
    paragraph(w.error),
  ].join('\n');
}
