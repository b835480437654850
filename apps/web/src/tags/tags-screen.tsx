import { useState } from 'react';
import { useHolding } from '../app/session.ts';
import { words } from '../app/words.ts';
import { Choice } from '../ui/choice.tsx';
import { Icon } from '../ui/icons.tsx';
import { tagText } from '../weighing/tag.ts';
import { walkOf } from '../weighing/walk.ts';
import { TagPicture } from './tag-picture.tsx';
import './tags.css';

const NONE_BEGUN: ReadonlySet<string> = new Set();

/** A tag for each hive, to be printed and set under clear tape: the label in plain letters, and the code under it. */
export default function TagsScreen() {
  const holding = useHolding();
  const { tags, shell } = words;
  const [chosen, setChosen] = useState('all');
  if (holding === null) return <p className="waiting">{shell.opening}</p>;
  const yards = walkOf(holding, 0, NONE_BEGUN);
  const shown = yards.filter(({ yard }) => chosen === 'all' || yard === chosen);
  return (
    <main className="page tags">
      <div className="tags-keys">
        <h1>{tags.title}</h1>
        <p>{yards.length === 0 ? tags.none : tags.what}</p>
        <p className="note">{tags.how}</p>
        {yards.length < 2 ? null : (
          <Choice
            legend={tags.yard}
            name="tags-yard"
            value={chosen}
            options={[{ value: 'all', label: tags.allYards }, ...yards.map(({ yard, name }) => ({ value: yard, label: name }))]}
            onChange={setChosen}
          />
        )}
        {yards.length === 0 ? null : (
          <p className="keys">
            <button type="button" className="key key-solid key-big" onClick={() => print()}>
              <Icon name="print" /> {tags.print(shown.reduce((n, { hives }) => n + hives.length, 0))}
            </button>
          </p>
        )}
      </div>
      {yards.length === 0 ? null : (
        <ul className="tag-paper" aria-label={tags.title}>
          {shown.flatMap(({ name, hives }) =>
            hives.map((hive) => (
              <li key={hive.hive} className="tag">
                <b className={hive.label.length > 4 ? 'num tag-label-long' : 'num'}>{hive.label}</b>
                <TagPicture text={tagText(hive)} label={tags.code(hive.label)} />
                <span>{name}</span>
              </li>
            )),
          )}
        </ul>
      )}
    </main>
  );
}
