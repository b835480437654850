import type { TopAnswer, TopForecastAnswer } from '@winterheft/core';
import { decimals, significant } from '@winterheft/words';
import type { View } from '../command.ts';
import { entry, facts, paragraph, table } from './layout.ts';

export function topTable(answer: TopAnswer, { words, units }: View): string {
  const w = words.top;
  const state = ({ wet, frost }: { wet: boolean; frost: boolean }) => (frost ? w.frost : wet ? w.wet : w.dry);
  const { heat, fill, absorbentFullDay } = answer;
  const watts = (value: number) => `${decimals(value, 1)} W`;
  return [
    table(
      [{ head: w.surface }, { head: w.temp, align: 'right' }, { head: w.dew, align: 'right' }, { head: w.state }],
      [
        ...answer.surfaces.map((face) => [face.layer, units.temp(face.tempC), units.temp(face.dewPointC), state(face)]),
        ...answer.places.map((place) => [w.places[place.place], units.temp(place.tempC), '', state(place)]),
      ],
    ),
    '',
    facts([
      [w.inside, units.temp(answer.insideC)],
      [w.dewPoint, units.temp(answer.dewPointC)],
      ...(answer.frostPointC === null ? [] : [[w.frostPoint, units.temp(answer.frostPointC)] as const]),
      [w.airflow, w.litres(significant(answer.airflowKgPerS * 1000, 3))],
      [w.made, units.mass(answer.waterMadeKg)],
      [w.out, units.mass(answer.waterOutKg)],
      [w.held, units.mass(answer.waterHeldKg)],
      [w.frozen, units.mass(answer.waterFrozenKg)],
      [w.dripped, `${units.mass(answer.waterDrippedKg)}, ${w.ranDown(units.mass(answer.ranDownWallsKg))}`],
      [w.heat, w.ways(watts(heat.topW), watts(heat.rimW), watts(heat.wallsW), watts(heat.belowW), watts(heat.airW))],
      ...(fill === null
        ? []
        : [[w.fill, w.fillHolds(units.mass(fill.heldKg), units.mass(fill.vapourCapacityKg), units.mass(fill.liquidCapacityKg))] as const]),
      ...(absorbentFullDay === null ? [] : [[w.fill, w.fullDay(absorbentFullDay)] as const]),
    ]),
    ...answer.notes.map((note) => entry('-', w.notes[note])),
    paragraph(w.valid),
  ].join('\n');
}

export function topsTable(answer: TopForecastAnswer, { words, units }: View): string {
  const w = words.tops;
  const kg = (value: number) => decimals(units.massOf(value), 1);
  const right = (head: string) => ({ head, align: 'right' as const });
  const heads = [w.need, w.made, w.out, w.held, w.mostFrozen, w.fell, w.ran, w.heat].map((head) => right(`${head}\n${units.massUnit}`));
  return [
    table(
      [{ head: w.name, max: 16 }, ...heads, right(w.wetDays), right(w.frostDays), right(w.full), right(w.cost)],
      answer.tops.map((top) => [
        top.name,
        kg(top.needKg),
        kg(top.waterMadeKg.p50),
        kg(top.waterOutKg.p50),
        kg(top.waterHeldKg.p50),
        kg(top.mostFrozenKg.p50),
        kg(Math.max(0, top.waterDrippedKg.p50 - top.ranDownWallsKg.p50)),
        kg(top.ranDownWallsKg.p50),
        kg(top.topHeatHoneyKg.p50),
        decimals(top.wetLidDays.p50, 0),
        decimals(top.frostLidDays.p50, 0),
        top.absorbentFull === null ? '' : (top.absorbentFull.p50 ?? w.never),
        top.cost === null ? '' : decimals(top.cost, 2),
      ]),
    ),
    paragraph(w.middles(answer.topMembers)),
    ...(answer.tops.some(({ coldFoamFrac }) => coldFoamFrac > 0) ? [paragraph(w.coldFoam)] : []),
    paragraph(words.top.valid),
  ].join('\n');
}
