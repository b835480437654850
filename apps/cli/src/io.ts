import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { bad, good, type Result } from '@winterheft/core';
import type { Fault } from '@winterheft/words';

/** The largest input that is read: a journal of a hundred thousand records takes about 40 MB. */
const LIMIT_MB = 256;

/** Everything the command does to the world, so that a test can stand in for it. */
export interface Io {
  out(text: string): void;
  err(text: string): void;
  /** Bytes of a named file, or of standard input for `-`. */
  read(name: string): Promise<Result<Uint8Array, Fault>>;
  /** True where somebody sits at the keyboard and nothing is piped in. */
  readonly stdinIsTerminal: boolean;
  now(): Date;
}

async function collected(stream: AsyncIterable<Uint8Array>, name: string): Promise<Result<Uint8Array, Fault>> {
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of stream) {
    size += part.byteLength;
    if (size > LIMIT_MB * 1024 * 1024) return bad({ kind: 'too-big', name, megabytes: LIMIT_MB });
    parts.push(part);
  }
  return good(Buffer.concat(parts));
}

async function readNamed(name: string): Promise<Result<Uint8Array, Fault>> {
  if (name === '-') return collected(process.stdin, 'standard input');
  try {
    if ((await stat(name)).isDirectory()) return bad({ kind: 'directory', name });
    return await collected(createReadStream(name), name);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    if (code === 'ENOENT' || code === 'ENOTDIR') return bad({ kind: 'no-file', name });
    return bad({ kind: 'unreadable', name, code });
  }
}

export const nodeIo: Io = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  read: readNamed,
  stdinIsTerminal: process.stdin.isTTY === true,
  now: () => new Date(),
};

/** Whoever reads us may stop early (`| head`): then we stop too, without a word. */
export function endQuietlyOnBrokenPipe(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EPIPE') process.exit(0);
      throw error;
    });
  }
}
