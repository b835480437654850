import { type Holding, kgToLb, provisionParameters, type SettingKey, type Settings } from '@winterheft/core';
import { unitFormat } from '@winterheft/words';
import { useState } from 'react';
import { report } from '../app/session.ts';
import { useUnitsName } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import { setModes } from '../modes/modes.ts';
import { FeedSettings } from '../setup/feed-settings.tsx';
import { HookEditor } from '../setup/hook-editor.tsx';
import { NumberSetting } from '../setup/number-setting.tsx';
import { writeSetting } from '../setup/write-setting.ts';
import { Choice, Switch } from '../ui/choice.tsx';
import { UnitsChoice } from '../ui/units-choice.tsx';
import { hooksOf, hooksSetting } from './hooks.ts';
import { OwnRuleSetting } from './own-rule-setting.tsx';

/** What counts for the whole holding: each choice is a record of the journal, written when it is made. */
export function HoldingSettings({ holding }: { readonly holding: Holding }) {
  const { settings } = words;
  const [refused, setRefused] = useState<string | null>(null);
  // A key stays where it was put while its record is being written.
  const [pressed, setPressed] = useState<Settings>({});
  const set: Settings = { ...holding.settings, ...pressed };
  const folded = useUnitsName();
  const unitsName = pressed.units ?? folded;
  const units = unitFormat(unitsName);
  const write = <K extends SettingKey>(key: K, value: NonNullable<Settings[K]>) => {
    setPressed((now) => ({ ...now, [key]: value }));
    const settled = () => setPressed(({ [key]: _done, ...rest }) => rest as Settings);
    writeSetting(key, value).then(setRefused).catch(report).finally(settled);
  };
  const certainty = String(set.certaintyFrac ?? provisionParameters.certaintyFrac.value);
  const isListed = Object.hasOwn(settings.certainties, certainty);
  return (
    <>
      {refused === null ? null : (
        <p className="error" role="alert">
          {refused}
        </p>
      )}
      <UnitsChoice
        units={unitsName}
        onChange={(next) => {
          setModes({ units: next });
          write('units', next);
        }}
      />
      <Choice
        legend={settings.certainty}
        name="certainty"
        value={isListed ? certainty : null}
        options={Object.entries(settings.certainties).map(([value, label]) => ({ value, label }))}
        onChange={(value) => write('certaintyFrac', Number(value))}
        note={isListed ? settings.certaintyNote : settings.certaintyOther(coreWords.chanceWords(Number(certainty)))}
      />
      <HookEditor
        hooks={hooksOf(set.hooks)}
        lengthUnit={units.lengthUnit}
        onChange={(hooks) => write('hooks', { ...set.hooks, ...hooksSetting(hooks) })}
      />
      <OwnRuleSetting now={set.ownRule} />
      <NumberSetting
        name="lookDays"
        label={settings.lookDays}
        unit={settings.days}
        now={set.lookDays === undefined ? '' : String(set.lookDays)}
        allowed={{ low: 1, high: 365, whole: true, unit: settings.days }}
        hint={assumed(set.lookDays, `${provisionParameters.lookDays.value} ${settings.days}`) ?? settings.lookDaysNote}
        write={(days) => writeSetting('lookDays', days)}
      />
      <Switch
        label={settings.crossYards}
        on={set.crossYards ?? false}
        onChange={(crossYards) => write('crossYards', crossYards)}
        note={settings.crossYardsNote}
      />
      <FeedSettings now={set} />
      <Prices now={set.prices} pounds={units.massUnit === 'lb'} massUnit={units.massUnit} />
    </>
  );
}

function assumed(now: unknown, instead: string): string | null {
  return now === undefined ? words.settings.notSet(instead) : null;
}

/** What is reckoned with until the keeper says his own; honey in frames costs nothing then. */
const assumedPrices = () => ({
  sugarPerKg: provisionParameters.sugarPerKg.value,
  workPerHour: provisionParameters.workPerHour.value,
  honeyPerKg: 0,
  opening: provisionParameters.openingPrice.value,
});

type PriceName = keyof ReturnType<typeof assumedPrices>;

function Prices({
  now = {},
  pounds,
  massUnit,
}: {
  readonly now?: Settings['prices'];
  readonly pounds: boolean;
  readonly massUnit: string;
}) {
  const { settings } = words;
  const instead = assumedPrices();
  const perUnit = (name: PriceName) => (name.endsWith('PerKg') && pounds ? 1 / kgToLb(1) : 1);
  const per = (name: PriceName) =>
    name.endsWith('PerKg') ? settings.perMass(massUnit) : name === 'opening' ? settings.perOpening : settings.perHour;
  const shown = (name: PriceName, price: number) => String(Math.round(price * perUnit(name) * 100) / 100);
  return (
    <fieldset className="setting-group">
      <legend>{settings.prices}</legend>
      <p className="note">{settings.pricesNote}</p>
      <div className="field-grid">
        {(Object.keys(instead) as PriceName[]).map((name) => (
          <NumberSetting
            key={name}
            name={`prices.${name}`}
            label={settings.priceNames[name]}
            unit={per(name)}
            now={now[name] === undefined ? '' : shown(name, now[name])}
            allowed={{ low: 0, high: 10_000 }}
            hint={assumed(now[name], shown(name, instead[name])) ?? ''}
            write={(price) => writeSetting('prices', { ...now, [name]: price / perUnit(name) })}
          />
        ))}
      </div>
    </fieldset>
  );
}
