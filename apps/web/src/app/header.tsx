import { useState } from 'react';
import { CopiedMark, LiftedBox, WordMark } from '../ui/icons.tsx';
import { NavigationBar } from './navigation-bar.tsx';
import type { PlaceName } from './places.ts';
import { isDemo, switchDemo, useSession } from './session.ts';
import { dayInWords, planDay } from './today.ts';
import { language, words } from './words.ts';

/** Yard, day and whether anything lacks a copy. The mark at the left opens the list of all places. */
export function Header({ here }: { readonly here: PlaceName }) {
  const { snapshot } = useSession();
  const { shell } = words;
  const yards = [...(snapshot?.holding.yards.values() ?? [])];
  const names = yards.length > 1 ? shell.yards(yards.length) : (yards[0]?.name ?? shell.product);
  const [demoOpen, setDemoOpen] = useState(false);
  return (
    <header className="header">
      <a
        className="header-mark"
        href="#/places"
        aria-label={`${shell.product}: ${shell.allPlaces}`}
        aria-current={here === 'places' ? 'page' : undefined}
      >
        <LiftedBox />
        <WordMark />
      </a>
      <p className="header-yard">
        <strong>{names}</strong> <span>{dayInWords(planDay(), language)}</span>
      </p>
      {isDemo ? (
        <button type="button" className="header-demo" aria-expanded={demoOpen} onClick={() => setDemoOpen(!demoOpen)}>
          {shell.demo}
        </button>
      ) : null}
      <NavigationBar here={here} where="above" />
      <CopiedState />
      {demoOpen ? (
        <div className="header-demo-says">
          <p>{shell.demoLine}</p>
          <button type="button" className="key" onClick={() => switchDemo(false)}>
            {shell.demoLeave}
          </button>
        </div>
      ) : null}
    </header>
  );
}

function CopiedState() {
  const { snapshot } = useSession();
  const { shell } = words;
  if (snapshot === null) return null;
  const { uncopied, records } = snapshot;
  const copied = uncopied === 0;
  return (
    <a className="header-copied" href="#/keep" title={copied ? shell.allCopiedLong : shell.notCopiedLong(uncopied)}>
      <CopiedMark copied={copied} />
      <span>{records === 0 ? shell.nothingYet : copied ? shell.allCopied : shell.notCopied(uncopied)}</span>
    </a>
  );
}
