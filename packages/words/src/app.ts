import { bank } from './app-bank.ts';
import { begin } from './app-begin.ts';
import { colony } from './app-colony.ts';
import { keep } from './app-keep.ts';
import { kit } from './app-kit.ts';
import { mites } from './app-mites.ts';
import { outlook } from './app-outlook.ts';
import { provision } from './app-provision.ts';
import { round } from './app-round.ts';
import { settings } from './app-settings.ts';
import { sheet } from './app-sheet.ts';
import { shell } from './app-shell.ts';
import { spring } from './app-spring.ts';
import { tags } from './app-tags.ts';
import { hiveTop } from './app-top.ts';
import { trace } from './app-trace.ts';
import { watch } from './app-watch.ts';
import { yard } from './app-yard.ts';
import type { Widened } from './language.ts';

/** Every sentence of the app in English. */
export const appEnglish = {
  shell,
  provision,
  bank,
  begin,
  keep,
  settings,
  outlook,
  colony,
  yard,
  round,
  sheet,
  tags,
  hiveTop,
  kit,
  mites,
  watch,
  spring,
  trace,
};

/** What a language has to say in the app. One that leaves out a key does not compile. */
export type AppWords = Widened<typeof appEnglish>;
