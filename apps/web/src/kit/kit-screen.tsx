import { KIT_FRAMES, type KitAnswer, kit, kitCsv, SHIPPED_TOPS, SYRUP_UNITS } from '@winterheft/core';
import { useId, useState } from 'react';
import { useHolding } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import { useUnits } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { saveText } from '../keep/hand-over.ts';
import { firstAnswers, KIT_DRAFT, type KitAnswers, kitInput, readAnswers } from '../topkit/kit-answers.ts';
import { Choice } from '../ui/choice.tsx';
import { Field } from '../ui/field.tsx';
import { useDraft } from '../ui/use-draft.ts';
import { Cuts } from './cuts.tsx';
import { KitList } from './kit-list.tsx';
import { Recipes } from './recipes.tsx';
import './kit.css';

/** One list of what to build, cook and buy; what is typed is kept as it is typed. */
export default function KitScreen() {
  const holding = useHolding();
  if (holding === null) return <p className="waiting">{words.shell.opening}</p>;
  return <KitForm hives={[...holding.colonies.values()].filter(({ ended }) => ended === null).length} />;
}

function KitForm({ hives }: { readonly hives: number }) {
  const of = words.kit;
  const units = useUnits();
  const pounds = units.massUnit === 'lb';
  const [answers, setAnswers] = useDraft<KitAnswers>(KIT_DRAFT, firstAnswers(hives, pounds), readAnswers);
  const set = (change: Partial<KitAnswers>) => setAnswers({ ...answers, ...change });
  const asked = kit(kitInput(answers, pounds));
  return (
    <main className="page kit">
      <div className="kit-head">
        <h1 aria-live="polite">{asked.ok ? titleOf(asked.value) : of.title(0)}</h1>
        <p className="note">{of.lead}</p>
      </div>
      <div className="kit-ask">
        <Field label={of.hives} value={answers.hives} inputMode="numeric" onChange={(text) => set({ hives: text })} />
        <Choice
          legend={of.top}
          name="kit-top"
          value={answers.top}
          options={[
            ...SHIPPED_TOPS.map((value) => ({ value, label: words.hiveTop.names[value] })),
            { value: 'none' as const, label: of.noTop },
          ]}
          onChange={(top) => set({ top })}
        />
        <Choice
          legend={of.frames}
          name="kit-frames"
          value={answers.frames}
          options={KIT_FRAMES.map((n) => ({ value: String(n), label: String(n) }))}
          onChange={(frames) => set({ frames })}
        />
        <Choice
          legend={of.candy}
          name="kit-candy"
          value={answers.candy}
          options={(['none', 'no-cook', 'boiled'] as const).map((value) => ({ value, label: of.candyKinds[value] }))}
          onChange={(candy) => set({ candy })}
        />
        {answers.candy === 'none' ? null : (
          <Field
            label={of.candySugar}
            value={answers.candySugar}
            inputMode="decimal"
            unit={units.massUnit}
            onChange={(text) => set({ candySugar: text })}
          />
        )}
        <SyrupAsk answers={answers} set={set} />
      </div>
      {asked.ok ? (
        <>
          <KitList answer={asked.value} answers={answers} set={set} units={units} />
          <Export answer={asked.value} />
          <Recipes answer={asked.value} units={units} />
          <Cuts answer={asked.value} units={units} />
        </>
      ) : (
        <p className="error" role="alert">
          {of.cannot(coreWords.faultSentence(asked.error))}
        </p>
      )}
    </main>
  );
}

function titleOf({ things, cost, unpriced }: KitAnswer): string {
  const of = words.kit;
  if (cost === null || things === 0) return of.title(things);
  return unpriced.length === 0 ? of.titleCost(things, cost.toFixed(2)) : of.titleFrom(things, cost.toFixed(2));
}

function SyrupAsk({ answers, set }: { readonly answers: KitAnswers; readonly set: (change: Partial<KitAnswers>) => void }) {
  const of = words.kit;
  const id = useId();
  return (
    <fieldset className="kit-syrup">
      <legend>{of.syrup}</legend>
      <Field label={of.syrupAmount} value={answers.syrupAmount} inputMode="decimal" onChange={(text) => set({ syrupAmount: text })} />
      <div className="field">
        <label htmlFor={id}>{of.syrupUnit}</label>
        <select
          id={id}
          value={answers.syrupUnit}
          onChange={({ target }) => {
            const unit = SYRUP_UNITS.find((name) => name === target.value);
            if (unit !== undefined) set({ syrupUnit: unit });
          }}
        >
          {SYRUP_UNITS.map((unit) => (
            <option key={unit}>{unit}</option>
          ))}
        </select>
      </div>
      <Field label={of.ratio} value={answers.ratio} onChange={(text) => set({ ratio: text })} />
      <Field label={of.days} value={answers.days} inputMode="numeric" unit={of.unitDays} onChange={(text) => set({ days: text })} />
      <Choice
        legend={of.basis}
        name="kit-basis"
        value={answers.basis}
        options={(['mass', 'volume'] as const).map((value) => ({ value, label: of.bases[value] }))}
        onChange={(basis) => set({ basis })}
      />
    </fieldset>
  );
}

/** The list on paper, on the clipboard, as a file. */
function Export({ answer }: { readonly answer: KitAnswer }) {
  const of = words.kit;
  const [says, setSays] = useState('');
  const csv = () => kitCsv(answer, coreWords.kit.items);
  const copy = () =>
    navigator.clipboard.writeText(csv()).then(
      () => setSays(of.copied),
      () => setSays(of.notCopied),
    );
  return (
    <div className="kit-export">
      <p className="keys">
        <button type="button" className="key key-solid" onClick={() => window.print()}>
          {of.print}
        </button>
        <button type="button" className="key" onClick={copy}>
          {of.copy}
        </button>
        <button type="button" className="key" onClick={() => setSays(of.saved(saveText(csv(), of.fileName(planDay()))))}>
          {of.csv}
        </button>
      </p>
      <p role="status">{says}</p>
    </div>
  );
}
