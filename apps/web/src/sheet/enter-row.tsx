import type { Hive } from '@winterheft/core';
import { type Units, unitFormat } from '@winterheft/words';
import { type ChangeEvent, memo, useId, useState } from 'react';
import { coreWords, language, words } from '../app/words.ts';
import type { Judgement } from '../plan/use-plan.ts';
import { StateShape } from '../ui/states.tsx';
import { figure } from '../weighing/figures.ts';
import { hiveFacts } from '../weighing/hive-facts.ts';
import { headlineOf } from '../weighing/told.ts';
import { cleanText, markOf, shownText, standingOf, tenfoldTexts } from '../weighing/typing.ts';
import { useJudgement } from '../weighing/use-judgement.ts';
import { BROODS, type Brood, type FilledRow, isFilled, NUMBER_FIELDS, type NumberField, rowFaults, typedEntry } from './filled.ts';
import { lastWeighing } from './rows.ts';

export interface EnterRowProps {
  readonly hive: Hive;
  readonly label: string;
  readonly row: FilledRow;
  readonly units: Units;
  readonly records: number;
  /** Why nothing of this hive can be written for the date of the sheet. */
  readonly notBegun: string | null;
  readonly onChange: (hive: string, row: FilledRow) => void;
}

const mark = markOf(language);

/** One hive of the sheet: five numbers and the brood, and below them what cannot be or what it comes to. */
export const EnterRow = memo(function EnterRow({ hive, label, row, units, records, notBegun, onChange }: EnterRowProps) {
  const { sheet } = words;
  const told = useId();
  const [at, setAt] = useState<NumberField | null>(null);
  const facts = hiveFacts(hive);
  const typed = isFilled(row) ? typedEntry(row, { facts, units }) : null;
  const judgement = useJudgement(hive.id, typed, records)?.judgement ?? null;
  const format = unitFormat(units);
  const refusals = [
    ...(notBegun === null || typed === null ? [] : [{ field: null, says: notBegun, instead: [] }]),
    ...rowFaults(row, facts).map((fault) => ({
      field: fault.field,
      says: fault.kind === 'no-number' ? words.begin.notNumber(row[fault.field]) : sheet.halves(fault.high),
      instead: [] as readonly string[],
    })),
    ...(typed === null || judgement === null ? [] : edgeRefusals(row, { judgement, at, units })),
  ];
  const wrong = new Set(refusals.map(({ field }) => field));
  const last = lastWeighing(hive, format);
  const set = (change: Partial<FilledRow>) => onChange(hive.id, { ...row, ...change });
  return (
    <li className="enter-row" aria-label={label}>
      <p className="enter-name">
        <strong className="num">{label}</strong>
        <small>{last.day === '' ? sheet.neverWeighed : sheet.rowNow(readingsText(last.last, format.massUnit), last.day)}</small>
      </p>
      {NUMBER_FIELDS.map((field) => (
        <label key={field} className="enter-cell">
          <span aria-hidden="true">
            {field === 'front' || field === 'rear' ? sheet.inUnit(sheet.fields[field], format.massUnit) : sheet.fields[field]}
          </span>
          <input
            aria-label={sheet.fieldOf(label, sheet.fields[field])}
            inputMode="decimal"
            autoComplete="off"
            enterKeyHint="next"
            data-field={field}
            value={row[field]}
            onFocus={() => setAt(field)}
            onBlur={() => setAt(null)}
            onChange={(event: ChangeEvent<HTMLInputElement>) => set({ [field]: event.target.value })}
            aria-invalid={wrong.has(field) ? true : undefined}
            aria-describedby={wrong.has(field) ? told : undefined}
          />
        </label>
      ))}
      <label className="enter-cell">
        <span aria-hidden="true">{sheet.fields.brood}</span>
        <select
          aria-label={sheet.fieldOf(label, sheet.fields.brood)}
          data-field="brood"
          value={row.brood}
          onChange={(event) => set({ brood: event.target.value as Brood })}
        >
          {BROODS.map((brood) => (
            <option key={brood} value={brood}>
              {sheet.brood[brood]}
            </option>
          ))}
        </select>
      </label>
      {refusals.length > 0 ? (
        <div className="enter-told" id={told} role="alert">
          {refusals.map(({ field, says, instead }) => (
            <p key={`${field} ${says}`} className="error">
              {says}{' '}
              <span className="keys">
                {instead.map((text) => (
                  <button key={text} type="button" className="key" onClick={() => field !== null && set({ [field]: text })}>
                    {sheet.itIs(shownText(text, mark))}
                  </button>
                ))}
              </span>
            </p>
          ))}
        </div>
      ) : typed !== null && judgement !== null ? (
        <Answer judgement={judgement} units={units} />
      ) : null}
    </li>
  );
});

/** Readings with their unit, or the word. */
function readingsText(last: ReturnType<typeof lastWeighing>['last'], unit: string): string {
  const each = last.map(({ text }) => text);
  return last.some(({ edge }) => edge === 'front') ? words.sheet.readings(each, unit) : each.join(' ');
}

function Answer({ judgement, units }: { readonly judgement: Judgement; readonly units: Units }) {
  const { shape, text } = headlineOf(judgement.line, unitFormat(units));
  return (
    <p className="enter-answer">
      <StateShape shape={shape} /> {text}
    </p>
  );
}

interface Refusal {
  readonly field: NumberField | null;
  readonly says: string;
  readonly instead: readonly string[];
}

/** Readings this hive cannot give; one that can still grow into a weight is left alone while it is being typed. */
function edgeRefusals(
  row: FilledRow,
  of: { readonly judgement: Judgement; readonly at: NumberField | null; readonly units: Units },
): readonly Refusal[] {
  const { sheet } = words;
  const { judgement, at, units } = of;
  const format = unitFormat(units);
  const refused = judgement.refused.flatMap(({ edge, range }): Refusal[] => {
    const text = cleanText(row[edge]);
    if (text === null || (at === edge && standingOf(text, range, units) === 'growing')) return [];
    const can = sheet.canRead(figure(format, range.lowKg), figure(format, range.highKg), format.massUnit);
    return [
      {
        field: edge,
        says: `${sheet.refused(shownText(text, mark), format.massUnit, sheet.fields[edge])} ${can}`,
        instead: tenfoldTexts(text, range, units),
      },
    ];
  });
  if (refused.length > 0 || judgement.fault === null || at === 'front' || at === 'rear') return refused;
  const isEdges = judgement.fault.kind === 'conflict' && judgement.fault.why === 'edges-not-one-hive';
  return [{ field: null, says: isEdges ? sheet.edgesDiffer : coreWords.faultSentence(judgement.fault), instead: [] }];
}
