// What the app is measured against: the same libraries, the same service worker and one worker. The frame stands when the database was read
// in the page, the heading when the worker has read it as well; nothing is computed and nothing else is shown.
import { wrap } from 'comlink';
import { useEffect, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { Route, Router } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { read } from './database.ts';

const worker = wrap<{ read: () => Promise<number> }>(new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }));
const inWorker = worker.read();

function Empty() {
  const [rows, setRows] = useState<number | null>(null);
  useEffect(() => {
    inWorker.then(setRows);
  }, []);
  return <main className="page">{rows === null ? null : <h1>{rows}</h1>}</main>;
}

await read();
createRoot(document.getElementById('root') as HTMLElement).render(
  <Router hook={useHashLocation}>
    <Route>
      <Empty />
    </Route>
  </Router>,
);
await inWorker;
await navigator.serviceWorker.register(new URL('sw.js', document.baseURI), { updateViaCache: 'none' });
