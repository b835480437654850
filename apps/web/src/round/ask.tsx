import type { Hive } from '@winterheft/core';
import { dayMonth, type UnitFormat, type Units } from '@winterheft/words';
import { words } from '../app/words.ts';
import type { Question, Spans } from '../weighing/check.ts';
import type { Action, Entry } from '../weighing/entry.ts';
import { figure } from '../weighing/figures.ts';
import { shownText, textOfKg } from '../weighing/typing.ts';
import { Figures } from './answer.tsx';

interface AskReadingProps {
  readonly question: Question;
  readonly hive: Hive;
  readonly spans: Spans;
  readonly units: UnitFormat;
  readonly unitsName: Units;
  readonly mark: string;
  readonly onAct: (action: Action) => void;
}

export function questionTitle(question: Question, unit: string, mark: string): string {
  return words.round.refused(shownText(question.text, mark), unit, words.round[question.edge]);
}

/** A reading that cannot be: both ways it can be meant as large keys. Typing on settles it too. */
export function AskReading({ question, hive, spans, units, unitsName, mark, onAct }: AskReadingProps) {
  const { round } = words;
  const { edge, text, instead, canInsist } = question;
  const title = questionTitle(question, units.massUnit, mark);
  return (
    <>
      <h1 className="round-question">
        <Figures text={title} />
      </h1>
      <p className="round-why">
        {hasRead(hive, edge, unitsName, mark) ??
          round.edgeCanRead(figure(units, spans[edge].lowKg), figure(units, spans[edge].highKg), units.massUnit)}{' '}
        {round.orTypeOn}
      </p>
      <div className="round-choices">
        {instead.map((other) => (
          <button
            key={other}
            type="button"
            className="round-choice round-choice-solid num"
            onClick={() => onAct({ do: 'text', edge, text: other })}
          >
            {shownText(other, mark)}
          </button>
        ))}
        <button
          type="button"
          className="round-choice"
          onClick={() => onAct(canInsist ? { do: 'sure', edge } : { do: 'text', edge, text: '' })}
        >
          {canInsist ? <Figures text={round.itIs(shownText(text, mark))} /> : round.typeAgain}
        </button>
      </div>
    </>
  );
}

/** What this edge of this hive has read so far, as a sentence; null where it was never read. */
function hasRead(hive: Hive, edge: 'front' | 'rear', units: Units, mark: string): string | null {
  const read = hive.weighings.flatMap((weighing) => (edge === 'front' ? (weighing.frontKg ?? []) : (weighing.rearKg ?? [])));
  if (read.length === 0) return null;
  const [low, high] = [Math.min(...read), Math.max(...read)].map((kg) => shownText(textOfKg(kg, units), mark)) as [string, string];
  return low === high ? words.round.edgeHasReadOnce(low) : words.round.edgeHasRead(low, high);
}

interface AskOldDraftProps {
  readonly offered: { readonly entry: Entry; readonly atMs: number };
  readonly mark: string;
  readonly onAnswer: (goOn: boolean) => void;
}

/** Something half typed more than twelve hours ago: offered, never gone on with by itself. */
export function AskOldDraft({ offered, mark, onAnswer }: AskOldDraftProps) {
  const { round } = words;
  const { front, rear } = offered.entry;
  const at = new Date(offered.atMs);
  const two = (n: number) => String(n).padStart(2, '0');
  const when = `${dayMonth(`${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`)} ${two(at.getHours())}:${two(at.getMinutes())}`;
  return (
    <>
      <h1 className="round-question">{round.oldDraft(when)}</h1>
      <p className="round-why">
        <Figures text={round.oldDraftHas(shownText(front, mark), shownText(rear, mark)) || round.oldDraftElse} />
      </p>
      <div className="round-choices">
        <button type="button" className="round-choice round-choice-solid" onClick={() => onAnswer(true)}>
          {round.goOn}
        </button>
        <button type="button" className="round-choice" onClick={() => onAnswer(false)}>
          {round.afresh}
        </button>
      </div>
    </>
  );
}
