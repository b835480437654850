import { language } from '../app/words.ts';
import { modes } from './modes.ts';

/** What can be felt; lengths in milliseconds, buzz and pause in turn. */
const PATTERNS = {
  key: [15],
  field: [30],
  tag: [30],
  enough: [200],
  short: [80, 60, 80, 60, 80],
  refused: [250, 120, 250],
} as const;

export type Felt = keyof typeof PATTERNS;

export const canSpeak = typeof speechSynthesis !== 'undefined';
export const canBuzz = typeof navigator.vibrate === 'function';

/** Lets something be felt, where that is switched on and the browser can. */
export function feel(what: Felt): void {
  if (modes.get().buzz && canBuzz) navigator.vibrate([...PATTERNS[what]]);
}

/** Says the sentence that stands on the screen, character for character; a newer one cuts an older one short. */
export function say(sentence: string): void {
  if (!modes.get().speak || !canSpeak) return;
  speechSynthesis.cancel();
  const utterance = new SpeechSynthesisUtterance(sentence);
  utterance.lang = language;
  speechSynthesis.speak(utterance);
}

export function sayKey(key: string): void {
  if (modes.get().speakKeys) say(key);
}
