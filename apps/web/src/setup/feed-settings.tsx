import type { Settings } from '@winterheft/core';
import { useUnits, useUnitsName } from '../app/use-units.ts';
import { words } from '../app/words.ts';
import { kgAsTyped } from './answers.ts';
import { FeedersSetting } from './feeders-setting.tsx';
import { NumberSetting } from './number-setting.tsx';
import { writeSetting } from './write-setting.ts';

/** What there is to feed with: sugar on hand, and the feeders. */
export function FeedSettings({ now }: { readonly now: Settings }) {
  const { settings } = words;
  const units = useUnits();
  const unitsName = useUnitsName();
  return (
    <>
      <NumberSetting
        name="sugar"
        label={settings.sugar}
        unit={units.massUnit}
        now={now.sugarKg === undefined ? '' : kgAsTyped(now.sugarKg, unitsName)}
        allowed={{ low: 0, high: 100_000, unit: units.massUnit }}
        hint={now.sugarKg === undefined ? settings.notSet(settings.noSugar) : ''}
        write={(sugar) => writeSetting('sugarKg', sugar / units.massOf(1))}
      />
      <FeedersSetting now={now.feeders} />
    </>
  );
}
