import {
  KIT_FRAMES,
  KIT_ITEMS,
  type KitInput,
  type KitItem,
  lbToKg,
  SHIPPED_TOPS,
  type ShippedTop,
  SYRUP_UNITS,
  shippedTop,
} from '@winterheft/core';
import { typedNumber } from '../ui/typed-number.ts';

export type CandyKind = 'none' | 'no-cook' | 'boiled';

/** What is typed under Kit, as typed. */
export interface KitAnswers {
  readonly hives: string;
  readonly top: ShippedTop | 'none';
  readonly frames: string;
  readonly candy: CandyKind;
  readonly candySugar: string;
  readonly syrupAmount: string;
  readonly syrupUnit: (typeof SYRUP_UNITS)[number];
  readonly ratio: string;
  readonly basis: 'mass' | 'volume';
  readonly days: string;
  /** Masses of fill and sugar in the shed are in the holding's unit, all else in pieces. */
  readonly stock: Readonly<Partial<Record<KitItem, string>>>;
  readonly prices: Readonly<Partial<Record<KitItem, string>>>;
}

export const KIT_DRAFT = 'kit';

export function firstAnswers(hives: number, pounds: boolean): KitAnswers {
  return {
    hives: String(Math.max(1, hives)),
    top: 'vented-box',
    frames: '10',
    candy: 'none',
    candySugar: '',
    syrupAmount: '',
    syrupUnit: pounds ? 'lb sugar' : 'kg sugar',
    ratio: '2:1',
    basis: 'mass',
    days: '',
    stock: {},
    prices: {},
  };
}

/** A stored draft; null where an older version wrote it. */
export function readAnswers(stored: unknown): KitAnswers | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const a = stored as KitAnswers;
  const texts = [a.hives, a.frames, a.candySugar, a.syrupAmount, a.ratio, a.days];
  const fits =
    texts.every((text) => typeof text === 'string') &&
    (a.top === 'none' || SHIPPED_TOPS.includes(a.top)) &&
    KIT_FRAMES.map(String).includes(a.frames) &&
    ['none', 'no-cook', 'boiled'].includes(a.candy) &&
    ['mass', 'volume'].includes(a.basis) &&
    SYRUP_UNITS.includes(a.syrupUnit) &&
    isTable(a.stock) &&
    isTable(a.prices);
  return fits ? a : null;
}

function isTable(table: unknown): boolean {
  return typeof table === 'object' && table !== null && Object.values(table).every((text) => typeof text === 'string');
}

export function isWeighed(item: KitItem): boolean {
  return item === 'fill' || item === 'sugar';
}

/** Candy as deep as in the shipped top that has it, where the sugar of a board is not typed. */
function candyDepthM(): number | undefined {
  return shippedTop('vented-box').stack.find(({ material }) => material === 'candy')?.thicknessM;
}

/** What the core is asked. A text that is no number goes on as NaN, which the core refuses by name. */
export function kitInput(a: KitAnswers, pounds: boolean): KitInput {
  const kg = (value: number) => (pounds ? lbToKg(value) : value);
  const amount = typedNumber(a.syrupAmount);
  const days = typedNumber(a.days);
  const sugar = typedNumber(a.candySugar);
  const table = (texts: KitAnswers['stock'], weighed: boolean) =>
    Object.fromEntries(
      KIT_ITEMS.flatMap((item) => {
        const value = typedNumber(texts[item] ?? '');
        return value === null ? [] : [[item, weighed && isWeighed(item) ? kg(value) : value]];
      }),
    );
  return {
    hives: typedNumber(a.hives) ?? Number.NaN,
    frames: Number(a.frames),
    ...(a.top === 'none' ? {} : { top: a.top }),
    ...(a.candy === 'none' ? {} : { candy: { kind: a.candy, ...(sugar === null ? { depthM: candyDepthM() } : { sugarKg: kg(sugar) }) } }),
    ...(amount === null
      ? {}
      : { syrup: { ratio: a.ratio, basis: a.basis, amount, unit: a.syrupUnit, ...(days === null ? {} : { daysToLastFeeding: days }) } }),
    stock: table(a.stock, true),
    prices: table(a.prices, false),
  };
}
