import { english, shared } from './english/index.ts';

export type Widened<T> = T extends string
  ? string
  : T extends (...args: infer A) => infer R
    ? (...args: A) => Widened<R>
    : { readonly [K in keyof T]: Widened<T[K]> };

/** What a language has to say. One that leaves out a key does not compile. */
export type Words = Widened<typeof english>;

/** What it has to say in the app too. */
export type SharedWords = Widened<typeof shared>;

export { english, shared };
