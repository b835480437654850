import { type Remote, wrap } from 'comlink';
import { databaseName, store } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import type { Planner } from './planner.ts';

type PlannerClient = Remote<Planner>;

let client: Promise<PlannerClient> | null = null;

/** The planner of this page, with the journal as it stood at the last call of `caughtUp`. */
function planner(): Promise<PlannerClient> {
  client ??= opened();
  return client;
}

async function opened(): Promise<PlannerClient> {
  const remote = await inWorker().catch(inPage);
  await remote.open(store.trouble === null ? databaseName : null, planDay());
  return remote;
}

/** The planner once it knows every record this page knows. */
export async function caughtUp(): Promise<PlannerClient> {
  const remote = await planner();
  await remote.catchUp(
    store.unsaved.map(({ text }) => text),
    planDay(),
  );
  return remote;
}

async function inWorker(): Promise<PlannerClient> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<Planner>(worker);
  await new Promise<void>((resolve, reject) => {
    worker.addEventListener('error', () => reject(new Error('the browser refused the worker')), { once: true });
    // The first answer of any kind proves that it runs.
    remote.settle().then(() => resolve(), reject);
  });
  return remote;
}

/** Where the browser refuses workers the same code runs in the page: slower under the finger, same figures. */
async function inPage(): Promise<PlannerClient> {
  const { Planner } = await import('./planner.ts');
  return new Planner() as unknown as PlannerClient;
}
