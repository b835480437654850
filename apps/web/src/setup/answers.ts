import { type Bodies, kgToLb, lbToKg, type Settings } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import type { Town } from '../background/towns.ts';
import { typedNumber } from '../ui/typed-number.ts';
import { type BuildChoice, DEFAULT_BUILD } from './builds.ts';

export const MOST_HIVES = 500;

export interface Hook {
  readonly where: 'under' | 'board';
  /** How far the board sticks out, when the hook holds there [mm]. */
  readonly outMm: number;
}

export interface RuleAnswer {
  readonly kind: 'none' | 'gross' | 'front';
  readonly weight: string;
  readonly colonies: string;
  readonly winters: string;
  readonly starved: string;
}

/** The settled and unsettled answers of Begin, as typed. */
export interface Answers {
  readonly yardName: string;
  readonly place: Town | null;
  readonly count: string;
  readonly build: BuildChoice;
  readonly labelWay: 'numbers' | 'rows' | 'own';
  readonly perRow: string;
  readonly ownLabels: string;
  readonly units: Units;
  readonly hooks: { readonly front: Hook; readonly rear: Hook };
  readonly rule: RuleAnswer;
}

export const NO_RULE: RuleAnswer = { kind: 'none', weight: '', colonies: '', winters: '', starved: '' };
/** 75 mm is the middle of the usual boards, 50 to 100 mm (common practice, no source); the keeper chooses. */
const UNDER: Hook = { where: 'under', outMm: 75 };

export function newAnswers(yardName: string, units: Units): Answers {
  return {
    yardName,
    place: null,
    count: '',
    build: DEFAULT_BUILD,
    labelWay: 'numbers',
    perRow: '9',
    ownLabels: '',
    units,
    hooks: { front: UNDER, rear: UNDER },
    rule: NO_RULE,
  };
}

/** A stored draft laid over fresh answers; what is no object is no draft. */
export function answersOf(stored: unknown, fresh: Answers): Answers | null {
  return typeof stored === 'object' && stored !== null ? { ...fresh, ...(stored as Partial<Answers>) } : null;
}

/** Hives as a whole number in range, or null. */
export function countOf(typed: string): number | null {
  const count = typedNumber(typed);
  return count !== null && Number.isInteger(count) && count >= 1 && count <= MOST_HIVES ? count : null;
}

export type LabelFault =
  | { readonly kind: 'twice' | 'long' | 'unseen'; readonly label: string }
  | { readonly kind: 'count'; readonly labels: number };

/** Signs that cannot be seen, or that turn the text beside them round: control and format characters of Unicode. */
export const UNSEEN = /[\p{Cc}\p{Cf}]/u;

/** Labels in walking order, or what is wrong with them. */
export function labelsOf(
  answers: Pick<Answers, 'labelWay' | 'perRow' | 'ownLabels'>,
  count: number,
): { readonly labels: readonly string[]; readonly fault: LabelFault | null } {
  const labels = madeLabels(answers, count);
  const twice = labels.find((label, i) => labels.indexOf(label) !== i);
  const long = labels.find((label) => label.length > 40);
  const unseen = labels.find((label) => UNSEEN.test(label));
  const fault: LabelFault | null =
    twice !== undefined
      ? { kind: 'twice', label: twice }
      : long !== undefined
        ? { kind: 'long', label: long }
        : unseen !== undefined
          ? { kind: 'unseen', label: unseen.replace(new RegExp(UNSEEN, 'gu'), '·') }
          : labels.length !== count
            ? { kind: 'count', labels: labels.length }
            : null;
  return { labels, fault };
}

function madeLabels({ labelWay, perRow, ownLabels }: Pick<Answers, 'labelWay' | 'perRow' | 'ownLabels'>, count: number): readonly string[] {
  if (labelWay === 'own') return ownLabels.split(/[\n,;]/).flatMap((label) => (label.trim() === '' ? [] : [label.trim()]));
  const inRow = labelWay === 'rows' ? (countOf(perRow) ?? 9) : count;
  return Array.from({ length: count }, (_, i) =>
    labelWay === 'rows' ? `${letters(Math.floor(i / inRow))}${(i % inRow) + 1}` : String(i + 1),
  );
}

/** A to Z, then AA, AB. */
function letters(n: number): string {
  return n < 26 ? String.fromCharCode(65 + n) : letters(Math.floor(n / 26) - 1) + letters(n % 26);
}

/** A mass as typed in these units [kg]; NaN where it is no number, null where nothing is typed. */
export function typedKg(text: string, units: Units): number | null {
  const typed = typedNumber(text);
  return typed === null || units === 'metric' ? typed : lbToKg(typed);
}

/** A mass in these units as somebody would type it. */
export function kgAsTyped(kg: number, units: Units): string {
  const value = units === 'metric' ? kg : kgToLb(kg);
  return String(Math.round(value * 10) / 10);
}

export type RuleFault = 'weight' | 'colonies' | 'winters' | 'starved' | 'starved-too-many';

/** The own rule as its setting takes it; null where there is none. */
export function ruleOf(
  rule: RuleAnswer,
  units: Units,
): { readonly value: Bodies['setting']['value'] | null; readonly fault: RuleFault | null } {
  if (rule.kind === 'none') return { value: null, fault: null };
  const weightKg = typedKg(rule.weight, units);
  const [colonies, winters, starved] = [rule.colonies, rule.winters, rule.starved].map(typedNumber);
  const isCount = (n: number | null | undefined, low: number) => typeof n === 'number' && Number.isInteger(n) && n >= low && n <= 10_000;
  if (weightKg === null || !(weightKg >= 1 && weightKg <= 300)) return { value: null, fault: 'weight' };
  if (!isCount(colonies, 1)) return { value: null, fault: 'colonies' };
  if (winters !== null && !isCount(winters, 1)) return { value: null, fault: 'winters' };
  if (!isCount(starved, 0)) return { value: null, fault: 'starved' };
  if ((starved as number) > (colonies as number)) return { value: null, fault: 'starved-too-many' };
  return {
    value: { [rule.kind === 'gross' ? 'grossKg' : 'frontKg']: weightKg, colonies, starved, ...(winters === null ? {} : { winters }) },
    fault: null,
  };
}

/** The setting of the hooks [m]. */
export function hooksSetting({ front, rear }: Answers['hooks']): Readonly<Record<string, number>> {
  const out = (hook: Hook) => (hook.where === 'board' ? hook.outMm / 1000 : 0);
  return { frontOverhangM: out(front), rearOverhangM: out(rear) };
}

/** A rule of the journal as it would have been typed. */
export function ruleAsTyped(rule: NonNullable<Settings['ownRule']>, units: Units): RuleAnswer {
  const kg = rule.grossKg ?? rule.frontKg ?? 0;
  return {
    kind: rule.grossKg === undefined ? 'front' : 'gross',
    weight: kgAsTyped(kg, units),
    colonies: String(rule.colonies),
    winters: rule.winters === undefined ? '' : String(rule.winters),
    starved: String(rule.starved),
  };
}
