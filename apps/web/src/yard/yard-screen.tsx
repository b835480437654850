import './yard.css';
import type { Holding, Yard } from '@winterheft/core';
import { dayMonth } from '@winterheft/words';
import { useState } from 'react';
import { useHolding } from '../app/session.ts';
import { words } from '../app/words.ts';
import { degrees } from '../setup/place-editor.tsx';
import { AddHives } from './add-hives.tsx';
import { HiveEditor } from './hive-editor.tsx';
import { hivesInOrder, labelOf } from './hive-order.ts';
import { buildWords } from './part-names.ts';
import { useWriting, type Writing, WrittenLine } from './written.tsx';
import { YardEditor } from './yard-editor.tsx';

/** Every yard with its hives in walking order; a row opens what can be changed of it. */
export default function YardScreen() {
  const holding = useHolding();
  const writing = useWriting();
  const { yard, begin, shell } = words;
  if (holding === null) return <p className="waiting">{shell.opening}</p>;
  const yards = [...holding.yards.values()];
  return (
    <main className="page yard">
      <h1>{shell.places.yard}</h1>
      {yards.length === 0 ? <p>{yard.noYard}</p> : null}
      {yards.map((one) => (
        <YardSection key={one.id} of={one} holding={holding} writing={writing} />
      ))}
      <p className="keys">
        <a className="key" href="#/begin">
          {begin.anotherYard}
        </a>
        {yards.length === 0 ? null : (
          <a className="key" href="#/tags">
            {yard.tags}
          </a>
        )}
      </p>
      <WrittenLine {...writing} />
    </main>
  );
}

interface YardSectionProps {
  readonly of: Yard;
  readonly holding: Holding;
  readonly writing: Writing;
}

function YardSection({ of, holding, writing }: YardSectionProps) {
  const { yard } = words;
  const [open, setOpen] = useState<string | null>(null);
  const hives = hivesInOrder(holding, of.id);
  const colonies = hives.reduce((n, hive) => n + hive.colonies.length, 0);
  const toggle = (name: string) => setOpen(open === name ? null : name);
  return (
    <section aria-labelledby={`yard-${of.id}`}>
      <h2 id={`yard-${of.id}`}>{of.name}</h2>
      <p className="note">
        {yard.hives(hives.length)}, {yard.colonies(colonies)}. {degrees(of)}
      </p>
      <ul className="ledger">
        {hives.map((hive, i) => (
          <li key={hive.id}>
            <button type="button" className="ledger-row yard-row" aria-expanded={open === hive.id} onClick={() => toggle(hive.id)}>
              <strong className="num">{labelOf(hive)}</strong>
              <span className="yard-build">{buildWords(hive.builds.at(-1)?.parts)}</span>
              <span className="yard-colony">{colonyWords(hive.colonies, holding)}</span>
              <span className="yard-weighed">{weighedWords(hive.weighings.at(-1)?.at.date, hive.colonies.length)}</span>
            </button>
            {open === hive.id ? (
              <HiveEditor hive={hive} before={hives[i - 1]} after={hives[i + 1]} holding={holding} writing={writing} />
            ) : null}
          </li>
        ))}
        {hives.length === 0 ? <li className="yard-none">{yard.noHives}</li> : null}
      </ul>
      <p className="keys">
        <button type="button" className="key" aria-expanded={open === '+'} onClick={() => toggle('+')}>
          {yard.addHives}
        </button>
        <button type="button" className="key" aria-expanded={open === '.'} onClick={() => toggle('.')}>
          {yard.changeYard}
        </button>
      </p>
      {open === '+' ? <AddHives yard={of.id} hives={hives} holding={holding} writing={writing} onDone={() => setOpen(null)} /> : null}
      {open === '.' ? <YardEditor of={of} writing={writing} onDone={() => setOpen(null)} /> : null}
    </section>
  );
}

function colonyWords(colonies: readonly string[], holding: Holding): string {
  const { yard } = words;
  if (colonies.length === 0) return yard.empty;
  if (colonies.length > 1) return yard.severalColonies(colonies.length);
  return holding.colonies.get(colonies[0] as string)?.flag === 'signs' ? yard.setAside : yard.colony;
}

function weighedWords(date: string | undefined, colonies: number): string {
  const { yard } = words;
  if (date !== undefined) return yard.weighedOn(dayMonth(date));
  return colonies === 0 ? '' : yard.notWeighed;
}
