import { Held, useHeld } from './held.ts';

/** `offered`: a new version waits. `elsewhere`: another window has taken it. */
export interface UpdateState {
  readonly update: 'none' | 'offered' | 'elsewhere';
}

const state = new Held<UpdateState>({ update: 'none' });
let waiting: ServiceWorker | null = null;
let asked = false;

export function useUpdate(): UpdateState {
  return useHeld(state);
}

export function declineUpdate(): void {
  state.set({ update: 'none' });
}

/** Lets the waiting version take over; the page loads again when it has. */
export function takeUpdate(): void {
  asked = true;
  waiting?.postMessage({ type: 'SKIP_WAITING' });
}

/**
 * Registers the service worker. A new version is offered, never forced. `clientsClaim` alone does not wake a page that had no controller when it
 * registered, so the page loads itself again on `controllerchange`, but only where it asked for the change.
 */
export async function registerServiceWorker(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  const hadController = navigator.serviceWorker.controller !== null;
  let first = !hadController;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (asked) location.reload();
    else if (!first) state.set({ update: 'elsewhere' });
    first = false;
  });
  const registration = await navigator.serviceWorker.register(new URL('sw.js', document.baseURI), { updateViaCache: 'none' });
  const offer = (worker: ServiceWorker | null) => {
    if (worker === null || navigator.serviceWorker.controller === null) return;
    waiting = worker;
    state.set({ update: 'offered' });
  };
  offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed') offer(registration.waiting);
    });
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') registration.update().catch(() => undefined);
  });
}
