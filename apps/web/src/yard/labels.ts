import { words } from '../app/words.ts';
import { UNSEEN } from '../setup/answers.ts';

const MOST_AT_ONCE = 200;

/** Labels typed in one line. */
export function labelsIn(typed: string): readonly string[] {
  return typed.split(/[,;\n]/).flatMap((label) => (label.trim() === '' ? [] : [label.trim()]));
}

/** Two hives of one yard may not carry one label, case apart. */
export function labelsFault(labels: readonly string[], standing: readonly string[]): string | null {
  const { yard, begin } = words;
  const taken = new Set(standing.map((label) => label.toLowerCase()));
  for (const label of labels) {
    if (taken.has(label.toLowerCase())) return yard.labelTwice(label);
    if (UNSEEN.test(label)) return begin.labelUnseen(label.replace(new RegExp(UNSEEN, 'gu'), '·'));
    if (label.length > 40) return begin.labelLong(label.slice(0, 40));
    taken.add(label.toLowerCase());
  }
  return labels.length > MOST_AT_ONCE ? yard.addTooMany(MOST_AT_ONCE) : null;
}
