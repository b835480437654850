import './settings.css';
import { useHolding } from '../app/session.ts';
import { words } from '../app/words.ts';
import { DeviceSettings } from './device-settings.tsx';
import { HoldingSettings } from './holding-settings.tsx';

/** What can be set, and what each is for: first this device, then the holding. */
export default function SettingsScreen() {
  const { settings } = words;
  const holding = useHolding();
  return (
    <main className="page settings">
      <h1>{settings.title}</h1>
      <section aria-labelledby="settings-device">
        <h2 id="settings-device">{settings.device}</h2>
        <p className="note">{settings.deviceNote}</p>
        <DeviceSettings />
      </section>
      <section aria-labelledby="settings-holding">
        <h2 id="settings-holding">{settings.holding}</h2>
        <p className="note">{settings.holdingNote}</p>
        {holding === null || holding.yards.size === 0 ? (
          <p className="note">{settings.nothingYet}</p>
        ) : (
          <HoldingSettings holding={holding} />
        )}
      </section>
    </main>
  );
}
