import { type Remote, wrap } from 'comlink';
import { databaseName } from '../app/demo-flag.ts';
import type { WorkApi } from './api.ts';

/** The same methods, each giving a promise. */
export type WorkClient = Remote<WorkApi>;

let client: Promise<WorkClient> | null = null;

/**
 * The one worker of this page. Where the browser refuses workers the same code runs in the page: slower under the finger, same figures.
 */
export function work(): Promise<WorkClient> {
  client ??= inWorker().catch(inPage);
  return client;
}

let running: Worker | null = null;

async function inWorker(): Promise<WorkClient> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: databaseName });
  running = worker;
  const remote = wrap<WorkApi>(worker);
  await new Promise<void>((resolve, reject) => {
    worker.addEventListener('error', () => reject(new Error('the browser refused the worker')), { once: true });
    // The first answer of any kind proves that it runs.
    remote.answers().then(() => resolve(), reject);
  });
  return remote;
}

async function inPage(): Promise<WorkClient> {
  running?.terminate();
  running = null;
  const { WorkApi } = await import('./api.ts');
  return new WorkApi() as unknown as WorkClient;
}
