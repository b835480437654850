// Written so that even an old Node can read it: no newer syntax here, and nothing newer is imported before it has run.
const WANTED = [20, 19];

/** Ends with a clear sentence where Node is too old. */
export function requireNode() {
  const have = process.versions.node.split('.').map(Number);
  if (have[0] > WANTED[0] || (have[0] === WANTED[0] && have[1] >= WANTED[1])) return;
  console.error(
    'Winterheft needs Node ' +
      WANTED.join('.') +
      ' or newer; this is Node ' +
      process.versions.node +
      '. Get a newer one from https://nodejs.org and run this again.',
  );
  process.exit(1);
}
