import { words } from '../app/words.ts';

/** From a screen without a bar to the others. */
export function RoundLinks() {
  const { round, shell } = words;
  return (
    <nav className="round-links" aria-label={round.elsewhere}>
      <a href="#/outlook">{shell.places.outlook}</a>
      <a href="#/provision">{shell.places.provision}</a>
      <a href="#/keep">{shell.places.keep}</a>
      <a href="#/settings">{shell.places.settings}</a>
      <a href="#/places">{shell.places.places}</a>
    </nav>
  );
}
