import type { Settings } from '@winterheft/core';
import { useState } from 'react';
import { report } from '../app/session.ts';
import { useUnits, useUnitsName } from '../app/use-units.ts';
import { words } from '../app/words.ts';
import { NO_RULE, type RuleAnswer, ruleAsTyped, ruleOf } from '../setup/answers.ts';
import { RuleEditor } from '../setup/rule-editor.tsx';
import { withdrawSetting, writeSetting } from '../setup/write-setting.ts';
import { useDraft } from '../ui/use-draft.ts';

type OwnRule = NonNullable<Settings['ownRule']>;
const asRule = (stored: unknown) =>
  typeof stored === 'object' && stored !== null ? { ...NO_RULE, ...(stored as Partial<RuleAnswer>) } : null;

/** The keeper's own rule: as in Begin, and it can be withdrawn. */
export function OwnRuleSetting({ now }: { readonly now: Settings['ownRule'] }) {
  const { settings } = words;
  const name = useUnitsName();
  const units = useUnits();
  const stands = now === undefined ? NO_RULE : ruleAsTyped(now, name);
  const [draft, setDraft, clear] = useDraft<RuleAnswer | null>('settings.ownRule', null, asRule);
  const [refused, setRefused] = useState<string | null>(null);
  const rule = draft ?? stands;
  const { value, fault } = ruleOf(rule, name);
  const isNew = draft !== null && JSON.stringify(draft) !== JSON.stringify(stands) && fault === null;
  const save = async () => {
    const refusal =
      value === null
        ? await withdrawSetting('ownRule').then(() => null)
        : await writeSetting('ownRule', { ...(now?.build === undefined ? {} : { build: now.build }), ...(value as OwnRule) });
    setRefused(refusal);
    if (refusal !== null) return;
    setDraft(null);
    clear();
  };
  return (
    <div className="setting-group">
      <RuleEditor rule={rule} units={name} massUnit={units.massUnit} onChange={setDraft} />
      {refused === null ? null : <p className="error">{refused}</p>}
      {isNew ? (
        <p className="keys">
          <button type="button" className="key key-solid" onClick={() => save().catch(report)}>
            {rule.kind === 'none' ? settings.ruleWithdraw : settings.write}
          </button>
        </p>
      ) : null}
    </div>
  );
}
