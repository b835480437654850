import type { Result } from '@winterheft/core';
import type { Fault } from '@winterheft/words';
import type { Io } from '../src/io.ts';
import { run } from '../src/main.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs one command line inside this process; `input` stands for standard input, files come from the disk as in real life. */
export async function runCommand(argv: readonly string[], input: string | Uint8Array | null = null, read?: Io['read']): Promise<Ran> {
  let out = '';
  let err = '';
  const io: Io = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    read: async (name): Promise<Result<Uint8Array, Fault>> => {
      if (name !== '-') return (read ?? (await import('../src/io.ts')).nodeIo.read)(name);
      return { ok: true, value: typeof input === 'string' ? new TextEncoder().encode(input) : (input ?? new Uint8Array()) };
    },
    stdinIsTerminal: input === null,
    now: () => new Date(2026, 8, 15),
  };
  const code = await run(argv, io);
  return { code, out, err };
}

/** Text without the kinds of trace that must never reach a keeper. */
export function looksLikeTrace(text: string): boolean {
  // a NaN the user typed is shown back in quotes; one of ours would stand bare
  return /\n\s+at |node:internal|\.ts:\d|\.mjs:\d|undefined|\[object|(?<!")NaN/.test(text);
}
