import type { Units } from '@winterheft/words';
import { words } from '../app/words.ts';
import { Choice } from '../ui/choice.tsx';
import { Field } from '../ui/field.tsx';
import { kgAsTyped, type RuleAnswer, type RuleFault, ruleOf } from './answers.ts';

interface RuleEditorProps {
  readonly rule: RuleAnswer;
  readonly units: Units;
  readonly massUnit: string;
  readonly onChange: (rule: RuleAnswer) => void;
}

/** What the keeper has gone by so far, and how it went. */
export function RuleEditor({ rule, units, massUnit, onChange }: RuleEditorProps) {
  const { begin } = words;
  const { fault } = ruleOf(rule, units);
  const set = (change: Partial<RuleAnswer>) => onChange({ ...rule, ...change });
  const wrong = (name: RuleFault, typed: string, sentence: string) => (fault === name && typed !== '' ? sentence : null);
  const counts = begin.between('1', '10 000');
  const masses = begin.between(`${kgAsTyped(1, units)} ${massUnit}`, `${kgAsTyped(300, units)} ${massUnit}`);
  const starved =
    fault === 'starved-too-many' ? begin.ruleStarvedTooMany : wrong('starved', rule.starved, begin.between('0', rule.colonies || '10 000'));
  return (
    <>
      <Choice
        legend={begin.rowRule}
        name="rule"
        value={rule.kind}
        options={(['none', 'gross', 'front'] as const).map((kind) => ({ value: kind, label: begin.ruleKinds[kind] }))}
        onChange={(kind) => set({ kind })}
        note={begin.ruleWhy}
      />
      {rule.kind === 'none' ? null : (
        <div className="field-grid">
          <Field
            label={begin.ruleWeight}
            inputMode="decimal"
            value={rule.weight}
            unit={massUnit}
            onChange={(weight) => set({ weight })}
            error={wrong('weight', rule.weight, masses)}
          />
          <Field
            label={begin.ruleColonies}
            inputMode="numeric"
            value={rule.colonies}
            onChange={(colonies) => set({ colonies })}
            error={wrong('colonies', rule.colonies, counts)}
          />
          <Field
            label={begin.ruleWinters}
            inputMode="numeric"
            value={rule.winters}
            onChange={(winters) => set({ winters })}
            error={wrong('winters', rule.winters, counts)}
          />
          <Field
            label={begin.ruleStarved}
            inputMode="numeric"
            value={rule.starved}
            onChange={(next) => set({ starved: next })}
            error={starved}
          />
        </div>
      )}
    </>
  );
}

/** In one line, for the row; null while something is missing. */
export function ruleWords(rule: RuleAnswer, units: Units, massUnit: string): string | null {
  const { begin } = words;
  if (rule.kind === 'none') return begin.ruleNone;
  if (ruleOf(rule, units).fault !== null) return null;
  const mass = `${rule.weight.trim()} ${massUnit}`;
  return rule.kind === 'gross' ? begin.ruleGross(mass) : begin.ruleFront(mass);
}
