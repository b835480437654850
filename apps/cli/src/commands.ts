import type { Command } from './command.ts';

/** Every command, in the order the help lists them. */
export const commands: readonly Command[] = [];
