import type { ReactNode } from 'react';
import { words } from '../app/words.ts';
import { Icon } from '../ui/icons.tsx';
import type { Action, Brood, Count, HeftWord, Seen } from '../weighing/entry.ts';
import type { PadKey } from '../weighing/typing.ts';

const ROWS: readonly PadKey[] = ['1', '2', '3', '4', '5', '6', '7', '8', '9', 'mark', '0', 'delete'];

/** Telephone order, zero bottom centre, point and comma on one key. `atMs` is when the finger came, not when we got to it. */
export function NumberPad({ onKey }: { readonly onKey: (key: PadKey, atMs: number) => void }) {
  const { round } = words;
  return (
    <fieldset className="round-pad" aria-label={round.numberKeys}>
      {ROWS.map((key) => (
        <button
          key={key}
          type="button"
          className="round-key num"
          aria-label={key === 'mark' ? round.markKey : key === 'delete' ? round.deleteKey : undefined}
          onClick={(event) => onKey(key, event.timeStamp)}
        >
          {key === 'mark' ? <span className="round-mark">. ,</span> : key === 'delete' ? <Icon name="delete" size={44} /> : key}
        </button>
      ))}
    </fieldset>
  );
}

interface SeenPadProps {
  readonly seen: Seen;
  /** Where the first tap on a count begins: the last count there was, else the middle of a box. */
  readonly start: Readonly<Record<Count, number>>;
  readonly most: Readonly<Record<Count, number>>;
  readonly onAct: (action: Action) => void;
}

const COUNTS: readonly Count[] = ['bees', 'top', 'below'];
const BROODS: readonly Brood[] = ['clean', 'signs', 'not-looked'];

/** The same grid with steppers: bees, capped on top, capped below, brood. All of it may be left out. */
export function SeenPad({ seen, start, most, onAct }: SeenPadProps) {
  const { round } = words;
  const step = (of: Count, by: -1 | 1) => {
    const now = seen[of];
    const to = now === null ? start[of] : Math.min(most[of], Math.max(0, now + by));
    onAct({ do: 'count', of, to });
  };
  return (
    <fieldset className="round-pad round-steppers" aria-label={round.seenOpen}>
      {COUNTS.filter((of) => most[of] > 0).flatMap((of): ReactNode[] => {
        const what = `${round.counts[of]}, ${round.countsOf[of]}`;
        return [
          <button
            key={`${of}-less`}
            type="button"
            className="round-key round-step"
            aria-label={round.less(what)}
            onClick={() => step(of, -1)}
          >
            <span aria-hidden="true">−</span>
          </button>,
          <output key={of} className="round-count">
            {seen[of] === null ? <b>–</b> : <b className="num">{seen[of]}</b>}
            <span>
              {round.counts[of]} <small>{round.countsOf[of]}</small>
            </span>
          </output>,
          <button
            key={`${of}-more`}
            type="button"
            className="round-key round-step"
            aria-label={round.more(what)}
            onClick={() => step(of, 1)}
          >
            <span aria-hidden="true">+</span>
          </button>,
        ];
      })}
      {BROODS.map((brood) => (
        <button
          key={brood}
          type="button"
          className="round-key round-brood"
          aria-pressed={seen.brood === brood}
          onClick={() => onAct({ do: 'brood', brood: seen.brood === brood ? null : brood })}
        >
          {seen.brood === brood ? <Icon name="tick" size={22} /> : null}
          {round.brood[brood]}
        </button>
      ))}
    </fieldset>
  );
}

const WORDS: readonly HeftWord[] = ['heavy', 'fair', 'light'];

interface WordPadProps {
  readonly word: HeftWord | null;
  /** What each word means in this hive, as a sentence. */
  readonly meanings: Readonly<Record<HeftWord, string>>;
  readonly onAct: (action: Action) => void;
}

/** A word instead of a weight, each with what it has meant. */
export function WordPad({ word, meanings, onAct }: WordPadProps) {
  const { round } = words;
  return (
    <fieldset className="round-words" aria-label={round.byHand}>
      {WORDS.map((one) => (
        <button
          key={one}
          type="button"
          className="round-word"
          aria-pressed={word === one}
          onClick={() => onAct({ do: 'word', word: word === one ? null : one })}
        >
          <b>{round.words[one]}</b>
          <span>{meanings[one]}</span>
        </button>
      ))}
    </fieldset>
  );
}
