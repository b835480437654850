import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource/b612/400.css';
import '@fontsource/b612/700.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import './styles/shell.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/app.tsx';
import { Guard } from './app/guard.tsx';
import { loadAllScreens, loadScreenAt } from './app/places.ts';
import { openSession, report } from './app/session.ts';
import { registerServiceWorker } from './app/update.ts';
import { language } from './app/words.ts';
import { work } from './background/client.ts';
import { applyModes } from './modes/modes.ts';

document.documentElement.lang = language;
applyModes();
window.addEventListener('unhandledrejection', (event) => report(event.reason));
window.addEventListener('error', (event) => report(event.error ?? event.message));

// The worker starts while the first screen is fetched and the half-typed is read.
void work();
const [{ journal }] = await Promise.all([openSession(), loadScreenAt(location.hash)]);
createRoot(document.getElementById('root') as HTMLElement).render(
  <StrictMode>
    <Guard>
      <App />
    </Guard>
  </StrictMode>,
);
// What is not on the screen yet waits for the journal: its files would stand in the way of the reading.
await journal;
loadAllScreens();
registerServiceWorker().catch(report);
