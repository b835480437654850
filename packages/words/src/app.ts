import { begin } from './app-begin.ts';
import { keep } from './app-keep.ts';
import { settings } from './app-settings.ts';
import { shell } from './app-shell.ts';
import type { Widened } from './language.ts';

/** Every sentence of the app in English. */
export const appEnglish = { shell, begin, keep, settings };

/** What a language has to say in the app. One that leaves out a key does not compile. */
export type AppWords = Widened<typeof appEnglish>;
