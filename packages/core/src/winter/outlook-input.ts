import { type BadInput, bad, good, inRange, type Result } from '../result/index.ts';
import { epochDayOf, isoDateOf } from '../units/index.ts';
import type { Pins } from './draws.ts';
import type { OutlookInput } from './outlook-types.ts';
import { isWinterName, winterNames } from './parameters.ts';

/** What an outlook may be asked, with the reason for each bound in the name of the field. */
export const OUTLOOK_RANGES = {
  bees: { low: 500, high: 100_000, unit: 'bees' },
  beesSdFrac: { low: 0, high: 1, unit: '' },
  storesKg: { low: 0, high: 120, unit: 'kg' },
  storesSdKg: { low: 0, high: 40, unit: 'kg' },
  conductanceWPerK: { low: 0.05, high: 20, unit: 'W/K' },
  dailyMeanC: { low: -60, high: 45, unit: '°C' },
  members: { low: 20, high: 20_000, unit: 'members' },
  certaintyFrac: { low: 0.5, high: 0.995, unit: '' },
  colonies: { low: 0, high: 100_000, unit: 'colonies' },
  grossKg: { low: 5, high: 250, unit: 'kg' },
} as const;

/** Days a run may last: a winter and its spring, not two. */
const MOST_DAYS = 400;

export interface OutlookSpan {
  readonly fromDay: number;
  readonly days: number;
  readonly broodFromDay: number | null | undefined;
  readonly forageDay: number | null | undefined;
  readonly pins: Pins;
}

/** Checks everything that does not need the weather; the first fault found is told. */
export function readOutlook(input: OutlookInput): Result<OutlookSpan> {
  const wrong = numberFault(input);
  if (wrong !== null) return bad(wrong);
  const span = readSpan(input);
  if (!span.ok) return span;
  const { fromDay, toDay } = span.value;
  const broodFrom = optionalDate('broodFrom', input.broodFrom);
  if (!broodFrom.ok) return broodFrom;
  const forage = optionalDate('forage', input.forage);
  if (!forage.ok) return forage;
  if (typeof forage.value === 'number' && forage.value < fromDay) {
    return bad({ kind: 'date-order', field: 'forage', value: isoDateOf(forage.value), notBefore: input.from });
  }
  const pins = readPins(input.fixed ?? {});
  if (!pins.ok) return pins;
  return good({ fromDay, days: toDay - fromDay + 1, broodFromDay: broodFrom.value, forageDay: forage.value, pins: pins.value });
}

function numberFault(input: OutlookInput): BadInput | null {
  const r = OUTLOOK_RANGES;
  const asked = [
    inRange('bees', input.bees, r.bees),
    inRange('beesSdFrac', input.beesSdFrac ?? 0, r.beesSdFrac),
    inRange('storesKg', input.storesKg ?? 0, r.storesKg),
    inRange('storesSdKg', input.storesSdKg ?? 0, r.storesSdKg),
    inRange('storesSdParts.tareKg', input.storesSdParts?.tareKg ?? 0, r.storesSdKg),
    inRange('storesSdParts.scaleKg', input.storesSdParts?.scaleKg ?? 0, r.storesSdKg),
    inRange('hive.conductanceWPerK', input.hive?.conductanceWPerK ?? 1, r.conductanceWPerK),
    inRange('members', input.members ?? 1000, r.members),
    inRange('certaintyFrac', input.certaintyFrac ?? 0.95, r.certaintyFrac),
    inRange('ownRule.grossKg', input.ownRule?.grossKg ?? r.grossKg.low, r.grossKg),
    inRange('ownRule.colonies', input.ownRule?.colonies ?? 0, r.colonies),
    inRange('ownRule.starved', input.ownRule?.starved ?? 0, { low: 0, high: input.ownRule?.colonies ?? 0, unit: 'colonies' }),
    inRange('seed', input.seed ?? 1, { low: -(2 ** 53) + 1, high: 2 ** 53 - 1, unit: '' }),
  ];
  for (const one of asked) if (!one.ok) return one.error;
  if (!Number.isInteger(input.members ?? 1000))
    return { kind: 'implausible', field: 'members', value: input.members!, unit: '', why: 'not-whole' };
  if (!Number.isInteger(input.seed ?? 1)) return { kind: 'implausible', field: 'seed', value: input.seed!, unit: '', why: 'not-whole' };
  const { hive } = input;
  if (hive?.conductanceWPerK !== undefined && hive.build !== undefined) {
    return { kind: 'conflict', fields: ['hive.conductanceWPerK', 'hive.build'], why: 'give-one' };
  }
  if (hive !== undefined && hive.build === undefined && (hive.windMPerS !== undefined || hive.snowFrac !== undefined)) {
    return { kind: 'missing', field: 'hive.build' };
  }
  return null;
}

function readSpan(input: OutlookInput): Result<{ fromDay: number; toDay: number }> {
  const fromDay = epochDayOf(input.from ?? '');
  if (fromDay === null) return bad({ kind: 'not-a-date', field: 'from', value: String(input.from) });
  const toDay = epochDayOf(input.to ?? '');
  if (toDay === null) return bad({ kind: 'not-a-date', field: 'to', value: String(input.to) });
  if (toDay < fromDay) return bad({ kind: 'date-order', field: 'to', value: input.to, notBefore: input.from });
  const length = inRange('to (days from `from`)', toDay - fromDay + 1, { low: 1, high: MOST_DAYS, unit: 'days' });
  return length.ok ? good({ fromDay, toDay }) : length;
}

function optionalDate(field: string, iso: string | null | undefined): Result<number | null | undefined> {
  if (iso === null || iso === undefined) return good(iso);
  const day = epochDayOf(iso);
  return day === null ? bad({ kind: 'not-a-date', field, value: iso }) : good(day);
}

function readPins(fixed: Readonly<Record<string, number>>): Result<Pins> {
  const pins: Pins = {};
  for (const [name, value] of Object.entries(fixed)) {
    if (!isWinterName(name)) return bad({ kind: 'unknown-choice', field: 'fixed', value: name, choices: winterNames });
    // A pin may be anything the model can be run with; physics needs most of them above zero.
    const low =
      name === 'looseTempC' || name === 'spellTempC' || name === 'warmFromC'
        ? -60
        : name === 'reserveKg' || name.endsWith('Frac')
          ? 0
          : 1e-9;
    const checked = inRange(`fixed.${name}`, value, { low, high: 1e9, unit: '' });
    if (!checked.ok) return checked;
    pins[name] = checked.value;
  }
  return good(pins);
}
