import { CopiedMark, LiftedBox, WordMark } from '../ui/icons.tsx';
import { NavigationBar } from './navigation-bar.tsx';
import type { PlaceName } from './places.ts';
import { isDemo, useSession } from './session.ts';
import { dayInWords, todayIso } from './today.ts';
import { language, words } from './words.ts';

/** Yard, day and whether anything lacks a copy. The mark at the left opens the list of all places. */
export function Header({ here }: { readonly here: PlaceName }) {
  const { snapshot } = useSession();
  const { shell } = words;
  const yards = [...(snapshot?.holding.yards.values() ?? [])];
  const names = yards.length === 0 ? shell.product : yards.map((yard) => yard.name).join(', ');
  return (
    <header className="header">
      <a className="header-mark" href="#/places" aria-label={shell.allPlaces} aria-current={here === 'places' ? 'page' : undefined}>
        <LiftedBox />
        <WordMark />
      </a>
      <p className="header-yard">
        <strong>{names}</strong> <span>{dayInWords(todayIso(), language)}</span>
        {isDemo ? <span className="header-demo">{shell.demo}</span> : null}
      </p>
      <NavigationBar here={here} where="above" />
      <CopiedState />
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
    <a className="header-copied" href="#/keep" aria-label={copied ? shell.allCopiedLong : shell.notCopiedLong(uncopied)}>
      <CopiedMark copied={copied} />
      <span>{records === 0 ? shell.nothingYet : copied ? shell.allCopied : shell.notCopied(uncopied)}</span>
    </a>
  );
}
