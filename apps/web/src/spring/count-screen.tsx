import { type Bodies, type Colony, DEADOUT_SIGNS, type Holding, type JournalRecord } from '@winterheft/core';
import { useState } from 'react';
import { useParams } from 'wouter';
import { ClockLine, TroubleLine } from '../app/lines.tsx';
import { append, report, strike, useHolding } from '../app/session.ts';
import { coreWords, words } from '../app/words.ts';
import { useSpring } from '../plan/use-spring.ts';
import { Icon } from '../ui/icons.tsx';
import { useDraft } from '../ui/use-draft.ts';
import { bodyOf, type Counted, NOT_COUNTED, readCounted } from './counted.ts';
import { toCount } from './to-count.ts';
import './spring.css';

const QUEENS = ['seen', 'laying', 'absent'] as const;

/** One hive counted in gloves: alive or dead, then what is seen; dead opens what is found in it. */
export default function CountScreen() {
  const { colony: raw = '' } = useParams<{ colony: string }>();
  const holding = useHolding();
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  const colony = holding.colonies.get(decodeURIComponent(raw));
  if (colony === undefined) {
    return (
      <main className="page">
        <TroubleLine />
        <h1>{words.spring.noColony}</h1>
        <a className="link" href="#/spring">
          {words.spring.back}
        </a>
      </main>
    );
  }
  return <Count key={colony.id} colony={colony} holding={holding} />;
}

function Count({ colony, holding }: { readonly colony: Colony; readonly holding: Holding }) {
  const { spring } = words;
  const { answer } = useSpring();
  const hive = colony.hive ?? colony.stays.at(-1)?.hive ?? '';
  const label = holding.hives.get(hive)?.label ?? colony.id;
  const [typed, setTyped, clear] = useDraft(`count-${colony.id}`, NOT_COUNTED, readCounted);
  const [written, setWritten] = useState<readonly JournalRecord[]>([]);
  const [fault, setFault] = useState<string | null>(null);
  const open = answer === null ? [] : toCount(holding, answer.spring).filter((one) => one.colony !== colony.id);
  const next = open[0];
  const change = (part: Partial<Counted>) => {
    setFault(null);
    setTyped({ ...typed, ...part });
  };
  const record = async () => {
    const body: Bodies['spring-count'] | null = bodyOf(colony.id, typed);
    if (body === null) return;
    const added = await append([{ yard: colony.yard, kind: 'spring-count', body }]);
    if (!added.ok) return setFault(coreWords.faultSentence(added.error));
    setWritten(added.value);
    clear();
    window.location.hash = next === undefined ? '#/spring' : `#/spring/${encodeURIComponent(next.colony)}`;
  };
  const undo = async () => {
    if (written.length > 0) {
      await strike(written);
      setWritten([]);
    }
    change(NOT_COUNTED);
    clear();
  };
  const { alive } = typed;
  return (
    <main className="count" aria-label={spring.countOf(label)}>
      <div className="count-top">
        <TroubleLine />
        <ClockLine />
        <h1 className="count-head">
          <span className="num">{label}</span>
          <small>{answer === null ? '' : spring.toCount(open.length + (alive === null ? 1 : 0))}</small>
        </h1>
        <div className="count-life">
          <button type="button" className="count-key" aria-pressed={alive === true} onClick={() => change({ alive: true })}>
            {spring.alive}
          </button>
          <button type="button" className="count-key" aria-pressed={alive === false} onClick={() => change({ alive: false })}>
            {spring.deadKey}
          </button>
        </div>
        {alive === null ? null : <p>{spring.optional}</p>}
        {alive === true ? <Living typed={typed} hive={hive} onChange={change} /> : null}
        {alive === false ? <Found typed={typed} onChange={change} /> : null}
        {fault === null ? null : <p className="error">{fault}</p>}
      </div>
      <div className="count-acts">
        <button type="button" className="count-undo" onClick={() => void undo().catch(report)}>
          {spring.undo}
        </button>
        <button type="button" className="count-next" disabled={alive === null} onClick={() => void record().catch(report)}>
          {next === undefined ? spring.recordLast : spring.record(next.label)} <Icon name="next" size={28} />
        </button>
      </div>
    </main>
  );
}

interface PartProps {
  readonly typed: Counted;
  readonly onChange: (part: Partial<Counted>) => void;
}

function Living({ typed, hive, onChange }: PartProps & { readonly hive: string }) {
  const { spring } = words;
  const frames = typed.frames;
  return (
    <>
      <fieldset className="count-step">
        <legend>{spring.bees}</legend>
        <button
          type="button"
          className="count-key"
          aria-label={spring.less}
          onClick={() => onChange({ frames: Math.max(0, (frames ?? 7) - 1) })}
        >
          −
        </button>
        <output className="num">{frames ?? '–'}</output>
        <button
          type="button"
          className="count-key"
          aria-label={spring.more}
          onClick={() => onChange({ frames: Math.min(40, (frames ?? 5) + 1) })}
        >
          +
        </button>
      </fieldset>
      <fieldset className="count-queen">
        <legend>{spring.queen}</legend>
        {QUEENS.map((queen) => (
          <button
            key={queen}
            type="button"
            className="count-key"
            aria-pressed={typed.queen === queen}
            onClick={() => onChange({ queen: typed.queen === queen ? null : queen })}
          >
            {spring.queens[queen]}
          </button>
        ))}
      </fieldset>
      <a className="key key-big" href={`#/round/${encodeURIComponent(hive)}`}>
        {spring.weigh}
      </a>
    </>
  );
}

function Found({ typed, onChange }: PartProps) {
  const w = coreWords.spring;
  const on = new Set(typed.found);
  const flip = (sign: Counted['found'][number]) =>
    onChange({ found: on.has(sign) ? typed.found.filter((one) => one !== sign) : [...typed.found, sign] });
  return (
    <fieldset className="count-found">
      <legend>{words.spring.found}</legend>
      {DEADOUT_SIGNS.map((sign) => (
        <button key={sign} type="button" className="count-key" aria-pressed={on.has(sign)} onClick={() => flip(sign)}>
          {w.found(sign)}
        </button>
      ))}
    </fieldset>
  );
}
