// What the app is measured against: the same libraries and the same service worker, one database opened and read, and nothing to show.
import Dexie from 'dexie';
import { createRoot } from 'react-dom/client';
import { Route, Router } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';

const database = new Dexie('empty-app');
database.version(1).stores({ facts: 'key' });
await database.table('facts').toArray();
createRoot(document.getElementById('root') as HTMLElement).render(
  <Router hook={useHashLocation}>
    <Route>
      <main className="page">
        <h1>Empty</h1>
      </main>
    </Route>
  </Router>,
);
await navigator.serviceWorker.register(new URL('sw.js', document.baseURI), { updateViaCache: 'none' });
