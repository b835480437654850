import type { Holding, WeighingWays } from '@winterheft/core';
import { unitFormat } from '@winterheft/words';
import { useEffect, useRef, useState } from 'react';
import { ClockLine, TroubleLine } from '../app/lines.tsx';
import { useSession } from '../app/session.ts';
import { useUnitsName } from '../app/use-units.ts';
import { coreWords, language, words } from '../app/words.ts';
import { feel, say, sayKey } from '../modes/tell.ts';
import { OwnRule } from '../verdict/own-rule.tsx';
import { entryAfter } from '../weighing/entry.ts';
import { adviceSentence, headlineOf } from '../weighing/told.ts';
import { isBounce, markOf, type PadKey, shownText, textOfKg } from '../weighing/typing.ts';
import type { WalkHive } from '../weighing/walk.ts';
import { Answer } from './answer.tsx';
import { AskOldDraft, AskReading, questionTitle } from './ask.tsx';
import { BigKeys } from './big-keys.tsx';
import { ErrorSum } from './error-sum.tsx';
import { HiveHead } from './hive-head.tsx';
import { NumberPad, SeenPad, WordPad } from './pads.tsx';
import { PastWeighings } from './past-weighings.tsx';
import { Readings } from './readings.tsx';
import type { TypedHere } from './round-ledger.tsx';
import { seenLimits } from './seen-limits.ts';
import { type Pane, useHive } from './use-hive.ts';
import type { Round } from './use-round.ts';
import { useTelling } from './use-telling.ts';
import { useWordMeanings } from './use-word-meanings.ts';

interface HiveRoundProps {
  readonly here: WalkHive;
  readonly place: number;
  readonly all: number;
  readonly round: Round;
  readonly holding: Holding;
  readonly records: number;
  readonly ways: WeighingWays;
  readonly desk: boolean;
  /** Told what stands in the fields, for the ledger beside it. */
  readonly onTyped: (typed: TypedHere | null) => void;
  readonly onList: () => void;
  readonly onScan: (() => void) | null;
  readonly onCautions: () => void;
}

/** One hive in the hand: readings, answer, keys. */
export function HiveRound({ here, place, all, round, holding, records, ways, desk, onTyped, onList, onScan, onCautions }: HiveRoundProps) {
  const unitsName = useUnitsName();
  const { mishap } = useSession();
  const units = unitFormat(unitsName);
  const [pane, setPane] = useState<Pane>('keys');
  const state = useHive({ here, holding, records, ways, units: unitsName, pane });
  const { entry, judged, question, advice } = state;
  const mark = markOf(language);
  const meanings = useWordMeanings(pane === 'word' ? here.hive : null, units, ways);
  const lastKey = useRef<{ readonly key: string; readonly atMs: number } | null>(null);
  const said = words.round;
  const line = judged?.judgement?.line ?? null;
  const last = state.hive.weighings.at(-1);
  const lastText = (kg: number | undefined) => (kg === undefined ? null : textOfKg(kg, unitsName));

  const verdict = line === null ? null : headlineOf(line, units);
  const asking = question === null ? null : questionTitle(question, units.massUnit, mark);
  const cameBack = state.cameBack ? said.notFinished(shownText(entry[entry.edge] || entry.front || here.label, mark)) : null;
  const answer =
    !state.begun || !state.isAnswered || verdict === null
      ? null
      : said.told(here.label, verdict.text, advice === null ? '' : `${said.now} ${adviceSentence(advice, units)}`);
  const told = useTelling(asking ?? cameBack ?? answer, asking !== null ? 'refused' : (verdict?.felt ?? 'field'), asking !== null);

  const { front, rear } = entry;
  const shownLine = state.isAnswered ? line : null;
  useEffect(() => {
    onTyped(front === '' && rear === '' ? null : { front, rear, line: shownLine });
  }, [front, rear, shownLine, onTyped]);

  const press = (key: PadKey, atMs: number) => {
    const isSecond = isBounce(lastKey.current, key, atMs);
    lastKey.current = { key, atMs };
    if (isSecond) return;
    feel('key');
    const after = entryAfter(entry, { do: 'key', key });
    if (after !== entry) sayKey(key === 'mark' ? mark : key === 'delete' ? said.deleteKey : key);
    state.act({ do: 'key', key });
  };
  const goOn = () => {
    const { bigKey } = state;
    if (question !== null || state.offered !== null || !state.leave(entry.edge)) return;
    if (bigKey.to === 'edge') {
      feel('field');
      say(`${said[entry.edge]} ${shownText(entry[entry.edge], mark)}`);
      state.act({ do: 'edge', edge: bigKey.edge });
      return;
    }
    feel('field');
    round.close(entry);
    if (round.next === null && !desk) onList();
  };
  const undo = () => {
    if (!state.undo()) round.goBack();
  };
  useKeyboard({ press, goOn, undo, typesInFields: desk });

  const limits = seenLimits(holding, here, state.facts);
  const isAsking = question !== null || state.offered !== null;
  return (
    <main className={`round-hive${isAsking ? ' round-asking' : ''}`} data-pane={pane}>
      <div className="round-top">
        <TroubleLine />
        <ClockLine />
        <HiveHead label={here.label} place={place} all={all} facts={state.facts} onList={onList} onScan={onScan} />
        <Readings
          fields={entry}
          boxes={state.facts.boxes}
          byHand={pane === 'word'}
          unit={units.massUnit}
          mark={mark}
          last={{ front: lastText(last?.frontKg), rear: lastText(last?.rearKg) }}
          asked={question?.edge ?? null}
          desk={desk}
          onAct={state.act}
        />
        <section className="round-answer" data-of={state.isAnswered ? `${entry.front}/${entry.rear}` : undefined}>
          {state.offered !== null ? (
            <AskOldDraft offered={state.offered} mark={mark} onAnswer={state.takeOffered} />
          ) : question !== null ? (
            <AskReading
              question={question}
              hive={state.hive}
              spans={state.spans}
              units={units}
              unitsName={unitsName}
              mark={mark}
              onAct={state.act}
            />
          ) : (
            <>
              {cameBack === null ? null : <p className="round-came-back">{cameBack}</p>}
              {mishap === null ? null : <p className="error">{words.shell.badNews(mishap)}</p>}
              {round.refused === null ? null : <p className="error">{round.refused}</p>}
              {state.swapped ? (
                <p className="round-swapped">
                  {said.swapped}
                  <button type="button" className="key key-big" onClick={() => state.act({ do: 'swap' })}>
                    {said.swap}
                  </button>
                </p>
              ) : null}
              {judged?.fault ? <p className="error">{said.answerBroken(coreWords.faultSentence(judged.fault))}</p> : null}
              {line !== null && (state.isAnswered || hasReading(state.begun, judged?.of)) ? (
                <Answer
                  line={line}
                  advice={advice}
                  basis={state.basis}
                  units={units}
                  certaintyFrac={holding.settings.certaintyFrac ?? 0.95}
                  recorded={!state.begun}
                />
              ) : (
                <h1 className="round-prompt">{entry[entry.edge] === '' ? said.liftAndRead(said[entry.edge]) : said.keepTyping}</h1>
              )}
              {desk && line !== null && state.isAnswered ? (
                <>
                  <OwnRule line={line} rule={holding.settings.ownRule} units={units} />
                  <ErrorSum line={line} readings={state.readings} basis={state.basis} ways={ways} units={units} />
                </>
              ) : null}
              {desk && !state.begun ? (
                <PastWeighings hive={state.hive} ways={ways} units={units} unitsName={unitsName} mark={mark} />
              ) : null}
            </>
          )}
          <p className="visually-hidden" aria-live="polite">
            {told}
          </p>
        </section>
      </div>
      {isAsking ? null : (
        <div className="round-more">
          <button type="button" className="round-more-key" onClick={() => setPane(pane === 'seen' ? 'keys' : 'seen')}>
            {pane === 'seen' ? said.backToKeys : said.seen}
          </button>
          <button type="button" className="round-more-key" onClick={() => setPane(pane === 'word' ? 'keys' : 'word')}>
            {pane === 'word' ? said.byScale : said.byHand}
          </button>
          <button type="button" className="round-more-key" onClick={onCautions}>
            {said.lifting}
          </button>
        </div>
      )}
      <div className="round-low">
        {pane === 'seen' ? (
          <SeenPad seen={entry.seen} {...limits} onAct={state.act} />
        ) : pane === 'word' ? (
          <WordPad word={entry.word} meanings={meanings} onAct={state.act} />
        ) : desk ? null : (
          <NumberPad onKey={press} />
        )}
        {desk ? <p className="note round-hint">{said.hint}</p> : null}
        <BigKeys
          bigKey={state.bigKey}
          next={round.next}
          gone={isAsking}
          canUndo={entry.past.length > 0 || round.canGoBack}
          onGo={goOn}
          onUndo={undo}
        />
      </div>
    </main>
  );
}

/** While the next digit is being judged the answer of the one before stays, so that nothing flickers under the eye. */
function hasReading(begun: boolean, of: string | undefined): boolean {
  return begun && of !== undefined && /frontKg|rearKg|word/.test(of);
}

interface Keyboard {
  readonly press: (key: PadKey, atMs: number) => void;
  readonly goOn: () => void;
  readonly undo: () => void;
  readonly typesInFields: boolean;
}

const PAD_KEYS: Readonly<Record<string, PadKey>> = { '.': 'mark', ',': 'mark', Backspace: 'delete' };

/** A keyboard works everywhere: digits where no field has the focus, Enter goes on, Ctrl Z takes back. */
function useKeyboard(keyboard: Keyboard): void {
  const latest = useRef(keyboard);
  latest.current = keyboard;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const { press, goOn, undo, typesInFields } = latest.current;
      const inField = event.target instanceof HTMLInputElement;
      const onButton = event.target instanceof HTMLButtonElement || event.target instanceof HTMLAnchorElement;
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z') {
        event.preventDefault();
        undo();
      } else if (event.ctrlKey || event.metaKey || event.altKey) {
        return;
      } else if (event.key === 'Enter' && !onButton) {
        event.preventDefault();
        goOn();
      } else if (!inField && !typesInFields) {
        const key = /^\d$/.test(event.key) ? (event.key as PadKey) : PAD_KEYS[event.key];
        if (key !== undefined) press(key, event.timeStamp);
      }
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
