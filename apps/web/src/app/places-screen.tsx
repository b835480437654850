import type { Place } from './places.ts';
import { words } from './words.ts';

/** Every place there is, with what it is for. */
export function PlacesScreen({ places }: { readonly places: readonly Place[] }) {
  const { shell } = words;
  return (
    <main className="page">
      <h1>{shell.allPlaces}</h1>
      <ul className="ledger">
        {places
          .filter((place) => place.listed)
          .map((place) => (
            <li key={place.name}>
              <a className="ledger-row" href={`#${place.address}`}>
                <strong>{shell.places[place.name]}</strong>
                <span>{shell.placeUses[place.name]}</span>
              </a>
            </li>
          ))}
      </ul>
    </main>
  );
}
