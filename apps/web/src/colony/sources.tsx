import { type FigureWords, figures } from '@winterheft/words';
import { type SyntheticEvent, useState } from 'react';
import { report } from '../app/session.ts';
import { language, words } from '../app/words.ts';
import { type Citations, citations } from './citations.ts';
import { figureName, sourceGroups, unitName } from './source-groups.ts';
import { sourceId } from './source-key.tsx';

const figureWords: FigureWords = { en: figures }[language];

/** Every figure of the model with its value, its range, where it comes from and how far that can be trusted. */
export function Sources() {
  const { colony } = words;
  const [cited, setCited] = useState<Citations | null>(null);
  const toggled = (event: SyntheticEvent<HTMLDetailsElement>) => {
    if (event.currentTarget.open && cited === null) citations().then(setCited).catch(report);
  };
  return (
    <section>
      <h2>{colony.sourcesTitle}</h2>
      {sourceGroups.map((group) => (
        <details key={group.name} id={sourceId(group.name)} onToggle={toggled} className="sources">
          <summary>
            {colony.sources[group.name]} <small>{colony.sourceCount(Object.keys(group.rows).length)}</small>
          </summary>
          <ul>
            {Object.entries(group.rows).map(([name, row]) => {
              const source = cited?.get(row.source);
              const unit = unitName(figureWords, row.unit);
              return (
                <li key={name}>
                  <p>
                    <b>{figureName(figureWords, group.name, name)}</b>{' '}
                    {row.distribution === 'fixed' && row.low === row.high
                      ? colony.sourceFixed(String(row.value), unit)
                      : colony.sourceRow(String(row.value), unit, String(row.low), String(row.high))}
                    <span className="source-mark">{colony.marks[row.mark] ?? row.mark}</span>
                  </p>
                  <p className="note">{source === undefined ? row.source : colony.sourceFrom(source.citation, source.where)}</p>
                </li>
              );
            })}
          </ul>
        </details>
      ))}
    </section>
  );
}
