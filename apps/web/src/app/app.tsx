import { lazy, type ReactNode, Suspense, useEffect, useState } from 'react';
import { Redirect, Route, Router, Switch, useLocation } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { Guard } from './guard.tsx';
import { Header } from './header.tsx';
import { Lines } from './lines.tsx';
import { NavigationBar } from './navigation-bar.tsx';
import { barPlaces, type Place, type PlaceName, places } from './places.ts';
import { PlacesScreen } from './places-screen.tsx';
import { useHolding, useSession } from './session.ts';
import { words } from './words.ts';

export function App() {
  return (
    <Router hook={useHashLocation}>
      <Switch>
        {places.map((place) => (
          <Route key={place.name} path={place.path}>
            <Frame name={place.name} bare={place.bare} headed={place.headed}>
              <Shown place={place} />
            </Frame>
          </Route>
        ))}
        <Route path="/places">
          <Frame name="places">
            <PlacesScreen places={places} />
          </Frame>
        </Route>
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

/** Chosen when it is mounted and kept: a screen that changed its kind between two drawings would lose its state. */
function Shown({ place }: { readonly place: Place }) {
  const [Screen] = useState(place.screen);
  return <Screen />;
}

const InHandBar = lazy(async () => ({ default: (await import('../walk/in-hand-bar.tsx')).InHandBar }));

/** Frames taken and not yet placed; its file is only fetched when there are some. */
function Hand() {
  const inHand = useHolding()?.inHand.length ?? 0;
  return inHand === 0 ? null : (
    <Suspense fallback={null}>
      <InHandBar />
    </Suspense>
  );
}

interface FrameProps {
  readonly name: PlaceName;
  readonly bare?: boolean;
  readonly headed?: boolean;
  readonly children: ReactNode;
}

function Frame({ name, bare = false, headed = false, children }: FrameProps) {
  const title = words.shell.places[name];
  useEffect(() => {
    document.title = `${title} · ${words.shell.product}`;
    window.scrollTo(0, 0);
  }, [title]);
  const screen = (
    <Guard key={name}>
      <Suspense fallback={<p className="waiting">{words.shell.screenLoading}</p>}>{children}</Suspense>
    </Guard>
  );
  if (bare)
    return (
      <div className="bare">
        {headed ? <Header here={name} /> : null}
        <Hand />
        {screen}
      </div>
    );
  return (
    <div className="frame">
      <button type="button" className="skip" onClick={goToContent}>
        {words.shell.skip}
      </button>
      <Header here={name} />
      <Lines />
      <div id="content" tabIndex={-1}>
        {screen}
      </div>
      <Hand />
      <NavigationBar here={name} where="below" />
    </div>
  );
}

/** The address after `#` is the route, so a key moves the focus where elsewhere a link would. */
function goToContent(): void {
  document.getElementById('content')?.focus();
}

/** Where the app opens: at the first place of the bar, or at Begin while there is no yard. */
function Start() {
  const { snapshot, trouble } = useSession();
  if (snapshot === null && trouble === null) return <p className="waiting">{words.shell.opening}</p>;
  const hasYard = (snapshot?.holding.yards.size ?? 0) > 0;
  return <Redirect to={hasYard ? (barPlaces[0]?.address ?? '/places') : '/begin'} replace />;
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
