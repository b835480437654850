import type { Bodies } from '@winterheft/core';

export type Sign = Bodies['sign']['sign'];
export const SIGNS: readonly Sign[] = ['alive', 'silent', 'frost-plume', 'wet-lid', 'frozen-down'];

/** A wave, dots, a crystal, drops under a board, a box on ice. */
const PATHS: Readonly<Record<Sign, string>> = {
  alive: 'M3 24c4-16 8-16 12 0s8 16 12 0 8-16 12 0',
  silent: 'M4 24h2M14 24h2M24 24h2M34 24h2',
  'frost-plume': 'M21 4v10M21 28v10M6 12l9 5M27 25l9 5M36 12l-9 5M15 25l-9 5M21 15a6 6 0 1 0 .01 0',
  'wet-lid': 'M4 10h34M14 18l-4 8a4.5 4.5 0 1 0 8 0zM29 20l-4 8a4.5 4.5 0 1 0 8 0z',
  'frozen-down': 'M9 6h24v22H9zM3 32h36M8 32v6M16 32v3M24 32v6M32 32v4',
};

export function SignIcon({ sign }: { readonly sign: Sign }) {
  return (
    <svg className="sign-icon" viewBox="0 0 42 42" width="52" height="52" aria-hidden="true">
      <path d={PATHS[sign]} />
    </svg>
  );
}
