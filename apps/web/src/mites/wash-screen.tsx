import type { Colony, Holding, JournalRecord } from '@winterheft/core';
import { decimals } from '@winterheft/words';
import { useState } from 'react';
import { useParams } from 'wouter';
import { append, strike, useHolding } from '../app/session.ts';
import { coreWords, words } from '../app/words.ts';
import { useMites } from '../plan/use-mites.ts';
import { Choice } from '../ui/choice.tsx';
import { Field } from '../ui/field.tsx';
import { useDraft } from '../ui/use-draft.ts';
import { NO_WASH, readWash, washBody, washSays } from './wash-entry.ts';
import './mites.css';

const METHODS = ['alcohol', 'sugar', 'co2'] as const;
const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0'] as const;

const labelOf = (holding: Holding, colony: Colony) => holding.hives.get(colony.hive ?? '')?.label ?? colony.id;

/** Bees and mites of one wash, with its interval while it is typed. Without a colony: which one. */
export default function WashScreen() {
  const { colony: raw } = useParams<{ colony?: string }>();
  const holding = useHolding();
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  const colony = raw === undefined ? undefined : holding.colonies.get(decodeURIComponent(raw));
  if (colony !== undefined && colony.ended == null) return <Entry key={colony.id} colony={colony} label={labelOf(holding, colony)} />;
  return (
    <main className="page">
      <h1>{words.mites.washTitle}</h1>
      <ul className="ledger">
        {[...holding.colonies.values()]
          .filter(({ ended }) => ended == null)
          .map((one) => (
            <li key={one.id}>
              <a className="ledger-row" href={`#/mites/wash/${encodeURIComponent(one.id)}`}>
                <strong>{labelOf(holding, one)}</strong>
              </a>
            </li>
          ))}
      </ul>
    </main>
  );
}

function Entry({ colony, label }: { readonly colony: Colony; readonly label: string }) {
  const of = words.mites;
  const { answer } = useMites();
  const [typed, setTyped, clear] = useDraft(`wash-${colony.id}`, NO_WASH, readWash);
  const [written, setWritten] = useState<readonly JournalRecord[]>([]);
  const [says, setSays] = useState<string | null>(null);
  const level = answer?.yards.find(({ yard }) => yard === colony.yard)?.level ?? null;
  const result = washSays(typed, level?.treat);
  const fault = result === null || result.ok ? null : result.error;
  const sentence = fault === null ? null : coreWords.faultSentence(fault);
  const isBees = fault !== null && 'field' in fault && fault.field === 'bees';
  const change = (part: Partial<typeof typed>) => {
    setSays(null);
    setTyped({ ...typed, ...part });
  };
  const record = async () => {
    const answered = await append([{ yard: colony.yard, kind: 'wash', body: washBody(colony.id, typed) }]);
    if (!answered.ok) return setSays(of.notRecorded(coreWords.faultSentence(answered.error)));
    setWritten(answered.value);
    setSays(of.recorded(Number(typed.mites), Number(typed.bees)));
    setTyped(NO_WASH);
    clear();
  };
  const undo = async () => {
    await strike(written);
    setWritten([]);
    setSays(null);
  };
  const per = coreWords.mitesPer100;
  return (
    <main className="page wash">
      <h1>{of.washOf(label)}</h1>
      <div className="field-grid">
        <Field
          label={of.bees}
          value={typed.bees}
          onChange={(bees) => change({ bees })}
          inputMode="numeric"
          error={isBees ? sentence : null}
        />
        <Field
          label={of.mites}
          value={typed.mites}
          onChange={(mites) => change({ mites })}
          inputMode="numeric"
          error={isBees ? null : sentence}
        />
      </div>
      <div aria-live="polite">
        {result?.ok ? (
          <>
            <p className="wash-interval num">
              {of.interval(per(result.value.rateFrac), per(result.value.lowFrac), per(result.value.highFrac))}
            </p>
            {result.value.decision === 'withheld' || result.value.notes.includes('few-bees') ? <p>{of.withheld}</p> : null}
            {level !== null && result.value.chanceAboveFrac !== undefined && result.value.decision !== 'withheld' ? (
              <p>{of.above(per(level.treat), decimals(20 * result.value.chanceAboveFrac, 0))}</p>
            ) : null}
          </>
        ) : null}
        {says === null ? null : <p>{says}</p>}
      </div>
      {result?.ok && result.value.insteadMites !== undefined ? (
        <div>
          <p>{of.tooMany}</p>
          <p className="keys">
            {result.value.insteadMites.map((count) => (
              <button key={count} type="button" className="key" onClick={() => change({ mites: String(count) })}>
                {count}
              </button>
            ))}
          </p>
        </div>
      ) : null}
      <fieldset className="wash-pad" aria-label={of.digits}>
        {DIGITS.map((digit) => (
          <button key={digit} type="button" className="key key-big num" onClick={() => change({ mites: typed.mites + digit })}>
            {digit}
          </button>
        ))}
        <button type="button" className="key key-big" onClick={() => change({ mites: typed.mites.slice(0, -1) })}>
          {of.erase}
        </button>
      </fieldset>
      <Choice
        legend={of.method}
        name="method"
        value={typed.method}
        options={METHODS.map((value) => ({ value, label: of.methods[value] }))}
        onChange={(method) => change({ method })}
      />
      <p className="keys">
        <button type="button" className="key key-big" disabled={written.length === 0} onClick={() => void undo()}>
          {of.undo}
        </button>
        <button type="button" className="key key-solid key-big" disabled={result === null || !result.ok} onClick={() => void record()}>
          {of.record}
        </button>
        <a className="link" href="#/mites">
          {of.back}
        </a>
      </p>
    </main>
  );
}
