import { words } from '../app/words.ts';
import { type Answers, countOf, type LabelFault, labelsOf, MOST_HIVES } from '../setup/answers.ts';
import { Choice } from '../ui/choice.tsx';
import { Field } from '../ui/field.tsx';

interface CountEditorProps {
  readonly count: string;
  readonly onChange: (count: string) => void;
  /** Enter, which on a phone puts the keyboard away. */
  readonly onDone: () => void;
}

/** How many hives. */
export function CountEditor({ count, onChange, onDone }: CountEditorProps) {
  const { begin } = words;
  const isWrong = count.trim() !== '' && countOf(count) === null;
  return (
    <Field
      label={begin.howMany}
      inputMode="numeric"
      enterKeyHint="done"
      autoComplete="off"
      autoFocus
      value={count}
      onChange={onChange}
      hint={begin.howManyHint}
      error={isWrong ? begin.between('1', String(MOST_HIVES)) : null}
      onKeyDown={(event) => {
        if (event.key === 'Enter' && countOf(count) !== null) onDone();
      }}
    />
  );
}

/** What stands on the hives. */
export function LabelsEditor({
  answers,
  count,
  onChange,
}: {
  readonly answers: Answers;
  readonly count: number;
  readonly onChange: (change: Partial<Answers>) => void;
}) {
  const { begin } = words;
  const { labels, fault } = labelsOf(answers, count);
  const [first, last] = [labels[0], labels.at(-1)];
  return (
    <>
      <Choice
        legend={begin.labels}
        name="labels"
        value={answers.labelWay}
        options={(['numbers', 'rows', 'own'] as const).map((way) => ({ value: way, label: begin.labelWays[way] }))}
        onChange={(labelWay) => onChange({ labelWay })}
      />
      {answers.labelWay === 'rows' ? (
        <Field
          label={begin.perRow}
          inputMode="numeric"
          value={answers.perRow}
          onChange={(perRow) => onChange({ perRow })}
          error={countOf(answers.perRow) === null ? begin.between('1', String(MOST_HIVES)) : null}
        />
      ) : null}
      {answers.labelWay === 'own' ? (
        <label className="own-labels">
          <span>{begin.ownLabels}</span>
          <textarea
            rows={6}
            value={answers.ownLabels}
            onChange={(event) => onChange({ ownLabels: event.target.value })}
            spellCheck={false}
          />
        </label>
      ) : null}
      {fault !== null ? <p className="error">{labelFault(fault, count)}</p> : null}
      {fault === null && first !== undefined && last !== undefined ? <p className="note">{begin.labelsShown(first, last)}</p> : null}
    </>
  );
}

/** `1 to 26`, or the way they are made while it is not known how many. */
export function labelWords(labels: readonly string[], way: string): string {
  const [first, last] = [labels[0], labels.at(-1)];
  return first === undefined || last === undefined ? way : words.begin.labelsShown(first, last);
}

export function labelFault(fault: LabelFault, count: number): string {
  const { begin } = words;
  if (fault.kind === 'count') return begin.labelsCount(fault.labels, count);
  if (fault.kind === 'unseen') return begin.labelUnseen(fault.label);
  return fault.kind === 'twice' ? begin.labelTwice(fault.label) : begin.labelLong(fault.label.slice(0, 40));
}
