import { barPlaces, type PlaceName } from './places.ts';
import { words } from './words.ts';

/**
 * Four places. Below the page on a phone, in the header at a desk: both are in the document and the style sheet shows one,
 * so that turning the phone moves nothing under a finger. The current one carries the lifted line.
 */
export function NavigationBar({ here, where }: { readonly here: PlaceName; readonly where: 'above' | 'below' }) {
  return (
    <nav className={`bar bar-${where}`} aria-label={words.shell.navigation}>
      {barPlaces.map((place) => (
        <a key={place.name} href={`#${place.address}`} aria-current={place.name === here ? 'page' : undefined}>
          {words.shell.places[place.name]}
          {place.name === here ? (
            <svg className="bar-lifted" viewBox="0 0 64 6" aria-hidden="true" preserveAspectRatio="none">
              <path d="M1 4.6 63 1.4" />
            </svg>
          ) : null}
        </a>
      ))}
    </nav>
  );
}
