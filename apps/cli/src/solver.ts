import type { Solve } from '@winterheft/core';

/** HiGHS, loaded only by the commands that solve something. */
export async function loadedSolver(): Promise<Solve> {
  const { loadHighs } = await import('@winterheft/solver');
  return loadHighs();
}
