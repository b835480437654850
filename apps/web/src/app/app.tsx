import { Suspense, useEffect } from 'react';
import { Redirect, Route, Router, Switch, useLocation } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { Guard } from './guard.tsx';
import { Header } from './header.tsx';
import { Lines } from './lines.tsx';
import { NavigationBar } from './navigation-bar.tsx';
import { barPlaces, type Place, places } from './places.ts';
import { useSession } from './session.ts';
import { words } from './words.ts';

export function App() {
  return (
    <Router hook={useHashLocation}>
      <Switch>
        {places.map((place) => (
          <Route key={place.name} path={place.path}>
            <Frame place={place} />
          </Route>
        ))}
        <Route path="/">
          <Start />
        </Route>
        <Route>
          <Nowhere />
        </Route>
      </Switch>
    </Router>
  );
}

function Frame({ place }: { readonly place: Place }) {
  const name = words.shell.places[place.name];
  useEffect(() => {
    document.title = `${name} · ${words.shell.product}`;
    window.scrollTo(0, 0);
  }, [name]);
  const screen = (
    <Guard key={place.name}>
      <Suspense fallback={<p className="waiting">{words.shell.screenLoading}</p>}>
        <place.Screen />
      </Suspense>
    </Guard>
  );
  if (place.bare) return <div className="bare">{screen}</div>;
  return (
    <div className="frame">
      <a className="skip" href="#content" onClick={goToContent}>
        {words.shell.skip}
      </a>
      <Header here={place.name} />
      <Lines />
      <div id="content" tabIndex={-1}>
        {screen}
      </div>
      <NavigationBar here={place.name} where="below" />
    </div>
  );
}

/** The address after `#` is the route, so the link moves the focus itself. */
function goToContent(event: React.MouseEvent): void {
  event.preventDefault();
  document.getElementById('content')?.focus();
}

/** Where the app opens: at the first place of the bar, or at Begin while there is no yard. */
function Start() {
  const { snapshot, trouble } = useSession();
  if (snapshot === null && trouble === null) return <p className="waiting">{words.shell.opening}</p>;
  const hasYard = (snapshot?.holding.yards.size ?? 0) > 0;
  return <Redirect to={hasYard ? (barPlaces[0]?.path ?? '/places') : '/begin'} replace />;
}

function Nowhere() {
  const [address] = useLocation();
  return (
    <main className="broken">
      <h1>{words.shell.noSuchPlace}</h1>
      <p>
        <code>{address}</code>
      </p>
      <p className="keys">
        <a className="key key-solid" href="#/">
          {words.shell.toStart}
        </a>
      </p>
    </main>
  );
}
