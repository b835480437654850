import { buildWeb } from '../scripts/build-web.mjs';

/** Before all tests: the app as its sources are. `E2E_DIST` names a folder that was built already. */
export default async function build(): Promise<void> {
  if (process.env['E2E_DIST'] === undefined) await buildWeb();
}
