import type { ColonyOutlook } from '@winterheft/core';
import { dayMonth, decimals, type UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { isAtRisk, nextOf, waitsForLook } from './groups.ts';

/** A line's masses as they are shown: whole pounds, or tenths of a kilogram. The difference is that of the figures shown. */
export interface Figures {
  readonly has: string | null;
  readonly sd: string | null;
  readonly need: string;
  /** Shown has minus shown need, in units; null where nothing is known. */
  readonly above: number | null;
  readonly unit: string;
}

const placesOf = (units: UnitFormat) => (units.massUnit === 'lb' ? 0 : 1);

export function figuresOf(line: ColonyOutlook, units: UnitFormat): Figures {
  const places = placesOf(units);
  const shown = (kg: number) => decimals(units.massOf(kg), places);
  const has = line.hasKg === null ? null : shown(line.hasKg);
  const need = shown(line.needKg);
  const above = has === null ? null : Number((Number(has) - Number(need)).toFixed(places));
  return { has, sd: line.hasSdKg === null ? null : shown(line.hasSdKg), need, above, unit: units.massUnit };
}

/** A mass with its unit, to the same places. */
export function massShown(kg: number, units: UnitFormat): string {
  return `${decimals(units.massOf(kg), placesOf(units))} ${units.massUnit}`;
}

/** `+3`, `−27`, `0`, with a question mark where a look is wanted first; `?` where nothing is known. */
export function signedAbove(line: ColonyOutlook, { above }: Figures): string {
  if (above === null) return '?';
  const sign = above > 0 ? '+' : above < 0 ? '−' : '';
  return `${sign}${Math.abs(above)}${waitsForLook(line) || line.weighedOn === null ? '?' : ''}`;
}

/** The verdict with its number: `short 27 lb`. */
export function verdictOf(line: ColonyOutlook, figures: Figures, unit = figures.unit): string {
  const { outlook } = words;
  const { above } = figures;
  if (above === null) return line.state === 'set aside' ? coreWords.stateWords('set aside') : outlook.unknown;
  const mass = `${Math.abs(above)} ${unit}`;
  const difference = above < 0 ? outlook.missing(mass) : outlook.above(mass);
  if (line.state === 'too small alone') return outlook.tooSmall(difference);
  if (line.state === 'set aside') return outlook.setAside(difference);
  if (line.state === 'short') return above < 0 ? outlook.short(mass) : outlook.shortByLittle(unit);
  if (waitsForLook(line)) return outlook.spareIfClean(mass);
  const verdict = line.state === 'spare' ? outlook.spare(mass) : above > 0 ? outlook.enough(mass) : outlook.enoughJust;
  return line.low ? `${verdict}, ${outlook.low}` : verdict;
}

/** The largest chance of running out that is asked for, in words: `1 chance in 20`. */
export function limitWords(certaintyFrac: number): string {
  return coreWords.chanceWords(1 - certaintyFrac);
}

/** Chances to run out, counted as the needles are; null where nothing is known. */
function chancesOf(line: ColonyOutlook, certaintyFrac: number): string | null {
  if (line.holdFrac === null || line.chancesIn20 === null) return null;
  const ofTwenty = line.chancesIn20 > 0 && line.chancesIn20 < 20 ? line.chancesIn20 / 20 : 1 - line.holdFrac;
  const chances = coreWords.chanceWords(ofTwenty);
  const limit = limitWords(certaintyFrac);
  return isAtRisk(line, certaintyFrac) && chances === limit ? words.outlook.justOver(limit) : chances;
}

/** When the first of the twenty cases ends: `from 25 Mar`, or that all last beyond the end. */
export function chanceLine(line: ColonyOutlook, of: { readonly certaintyFrac: number; readonly to: string }): string {
  const { outlook } = words;
  const chances = chancesOf(line, of.certaintyFrac);
  if (chances === null) return '';
  const first = line.cases?.[0] ?? null;
  if (first === null) return outlook.lastsLonger(dayMonth(of.to));
  return (line.chancesIn20 ?? 0) > 0 ? outlook.fromDay(chances, dayMonth(first)) : `${chances}; ${outlook.firstEnds(dayMonth(first))}`;
}

/** A row read aloud. */
export function rowSentence(
  line: ColonyOutlook,
  of: { readonly units: UnitFormat; readonly certaintyFrac: number; readonly to: string; readonly yard: string | null },
): string {
  const { outlook } = words;
  const figures = figuresOf(line, of.units);
  const spoken = outlook.spoken[figures.unit] ?? figures.unit;
  const chances = chancesOf(line, of.certaintyFrac);
  const first = line.cases?.[0] ?? null;
  const parts = [
    of.yard === null ? line.label : `${line.label}, ${of.yard}`,
    verdictOf(line, figures, spoken),
    chances === null ? outlook.needsOnly(`${figures.need} ${spoken}`) : outlook.toRunOut(chances),
  ];
  if (chances !== null)
    parts.push(
      first === null
        ? outlook.lastsLonger(dayMonth(of.to))
        : (line.chancesIn20 ?? 0) > 0
          ? outlook.from(dayMonth(first))
          : outlook.firstEnds(dayMonth(first)),
    );
  return outlook.rowSentence(parts);
}

/** What to do next with a colony, in a few words. */
export function nextWords(line: ColonyOutlook, units: UnitFormat): string {
  const next = nextOf(line);
  const { outlook } = words;
  if (next === null) return '';
  const sentence = outlook.next[next];
  if (typeof sentence === 'string') return sentence;
  const { above, unit } = figuresOf(line, units);
  return sentence(above === null || above === 0 ? outlook.lessThanOne(unit) : `${Math.abs(above)} ${unit}`);
}

/** What a group is short of, or has to spare: the sum of the differences as they are shown. */
export function sumShown(lines: readonly ColonyOutlook[], units: UnitFormat): string {
  const sum = lines.reduce((all, line) => all + Math.abs(figuresOf(line, units).above ?? 0), 0);
  return `${decimals(sum, placesOf(units))} ${units.massUnit}`;
}
