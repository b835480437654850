import type { Units } from '@winterheft/words';
import { Held, useHeld } from '../app/held.ts';

/** How this device shows and tells things. Not part of the journal: two people who share one need not share these. */
export interface Modes {
  readonly theme: 'system' | 'light' | 'dark' | 'sun';
  readonly keys: 'glove' | 'mitten';
  readonly hand: 'right' | 'left';
  /** Size of text in percent of what the browser is set to. */
  readonly text: 100 | 125 | 150 | 200;
  readonly speak: boolean;
  readonly speakKeys: boolean;
  readonly buzz: boolean;
  /** Units until the holding has a setting of its own. */
  readonly units: Units;
}

const KEY = 'winterheft-modes';

const DEFAULTS: Modes = {
  theme: 'system',
  keys: 'glove',
  hand: 'right',
  text: 100,
  speak: false,
  speakKeys: false,
  buzz: false,
  units: unitsOf(navigator.language.split('-')[1]),
};

/** What people weigh in there, as far as a country tells. */
export function unitsOf(country: string | undefined): Units {
  return country === 'US' ? 'us' : country === 'CA' ? 'ca' : 'metric';
}

const CHOICES: { readonly [K in keyof Modes]: readonly Modes[K][] } = {
  theme: ['system', 'light', 'dark', 'sun'],
  keys: ['glove', 'mitten'],
  hand: ['right', 'left'],
  text: [100, 125, 150, 200],
  speak: [false, true],
  speakKeys: [false, true],
  buzz: [false, true],
  units: ['metric', 'us', 'ca'],
};

function stored(): Modes {
  try {
    const read = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Record<string, unknown>;
    const known = Object.entries(CHOICES).filter(([key, choices]) => (choices as readonly unknown[]).includes(read[key]));
    return { ...DEFAULTS, ...Object.fromEntries(known.map(([key]) => [key, read[key]])) };
  } catch {
    return DEFAULTS;
  }
}

export const modes = new Held<Modes>(stored());

export function setModes(change: Partial<Modes>): void {
  modes.set(change);
  applyModes();
  try {
    localStorage.setItem(KEY, JSON.stringify(modes.get()));
  } catch {
    // A browser that keeps nothing keeps the modes as long as the page.
  }
}

/** Puts the modes where the style sheets look for them. Called before the first paint, so that nothing flashes. */
export function applyModes(): void {
  const { theme, keys, hand, text } = modes.get();
  const root = document.documentElement;
  if (theme === 'system') delete root.dataset['theme'];
  else root.dataset['theme'] = theme;
  root.dataset['keys'] = keys;
  root.dataset['hand'] = hand;
  root.style.fontSize = `${text}%`;
}

export function useModes(): Modes {
  return useHeld(modes);
}
