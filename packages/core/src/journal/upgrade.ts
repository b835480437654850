import type { Why } from './record.ts';

/** Turns a raw record of one version into one of the next. Must not lose a field it does not understand. */
export type Upgrade = (raw: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/** `UPGRADES[n - 1]` raises version n to n + 1; version 1 is the first and so far the only one. */
export const UPGRADES: readonly Upgrade[] = [];

/** A raw record raised to the version after the last step, without its `v`; or why it cannot be. A record without `v` is of version 1. */
export function upgradeRecord(
  raw: Readonly<Record<string, unknown>>,
  steps: readonly Upgrade[],
): { readonly ok: true; readonly raw: Readonly<Record<string, unknown>> } | { readonly ok: false; readonly why: Why } {
  if (!Object.hasOwn(raw, 'v')) return { ok: true, raw: steps.reduce((older, step) => step(older), raw) };
  const { v, ...rest } = raw;
  const current = steps.length + 1;
  if (typeof v !== 'number' || !Number.isInteger(v) || v < 1) {
    return { ok: false, why: { kind: 'not-a-record', error: { kind: 'not-a-number', field: 'v', value: String(v).slice(0, 40) } } };
  }
  if (v > current) return { ok: false, why: { kind: 'newer', version: v, readUpTo: current } };
  return { ok: true, raw: steps.slice(v - 1).reduce((older, step) => step(older), rest as Readonly<Record<string, unknown>>) };
}
