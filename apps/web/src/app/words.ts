import { type AppWords, appEnglish, type SharedWords, shared } from '@winterheft/words';

interface Language {
  readonly app: AppWords;
  readonly core: SharedWords;
}

/** A second language is a second row; one that leaves out a sentence does not compile. */
const languages = { en: { app: appEnglish, core: shared } } as const satisfies Readonly<Record<string, Language>>;
type Tag = keyof typeof languages;

/** The first language of the browser that there are words in. */
export const language: Tag =
  navigator.languages.map((tag) => tag.slice(0, 2)).find((tag): tag is Tag => Object.hasOwn(languages, tag)) ?? 'en';

/** The app's sentences in the language of the browser. */
export const words: AppWords = languages[language].app;
/** The sentences both shells share: refusals, states, chances, cautions. */
export const coreWords: SharedWords = languages[language].core;
