import { useState } from 'react';
import { report, setBy, store } from '../app/session.ts';
import { words } from '../app/words.ts';
import { type Modes, setModes, useModes } from '../modes/modes.ts';
import { canBuzz, canSpeak, feel, say } from '../modes/tell.ts';
import { Choice, Switch } from '../ui/choice.tsx';
import { Field } from '../ui/field.tsx';

const optionsOf = <T extends string>(labels: Readonly<Record<T, string>>) =>
  (Object.keys(labels) as T[]).map((value) => ({ value, label: labels[value] }));

/** Light, keys, hand, text, sound and buzz: what this device does, none of it in the journal. */
export function DeviceSettings() {
  const modes = useModes();
  const { settings } = words;
  const tryIt = () => {
    feel('enough');
    say(settings.trySentence);
  };
  return (
    <>
      <Choice
        legend={settings.theme}
        name="theme"
        value={modes.theme}
        options={optionsOf(settings.themes)}
        onChange={(theme) => setModes({ theme })}
        note={settings.sunOnce}
      />
      <Choice
        legend={settings.keys}
        name="keys"
        value={modes.keys}
        options={optionsOf(settings.keyKinds)}
        onChange={(keys) => setModes({ keys })}
        note={settings.keysNote}
      />
      <Choice
        legend={settings.hand}
        name="hand"
        value={modes.hand}
        options={optionsOf(settings.hands)}
        onChange={(hand) => setModes({ hand })}
        note={settings.handNote}
      />
      <Choice
        legend={settings.text}
        name="text"
        value={String(modes.text)}
        options={Object.entries(settings.texts).map(([value, label]) => ({ value, label }))}
        onChange={(text) => setModes({ text: Number(text) as Modes['text'] })}
      />
      <fieldset className="setting-group">
        <legend>{settings.told}</legend>
        <Switch
          label={settings.speak}
          on={modes.speak}
          onChange={(speak) => setModes({ speak })}
          note={canSpeak ? settings.speakNote : settings.speakMissing}
        />
        <Switch label={settings.speakKeys} on={modes.speakKeys} onChange={(speakKeys) => setModes({ speakKeys })} />
        <Switch
          label={settings.buzz}
          on={modes.buzz}
          onChange={(buzz) => setModes({ buzz })}
          note={canBuzz ? settings.buzzNote : settings.buzzMissing}
        />
        {modes.speak || modes.buzz ? (
          <p className="keys">
            <button type="button" className="key" onClick={tryIt}>
              {settings.tryIt}
            </button>
          </p>
        ) : null}
      </fieldset>
      <Writer />
    </>
  );
}

/** Who writes the records of this device; kept with every letter that makes a name. */
function Writer() {
  const [by, setTyped] = useState(store.by);
  const { settings } = words;
  const isName = by.trim().length > 0;
  return (
    <Field
      label={settings.by}
      value={by}
      maxLength={40}
      autoComplete="name"
      onChange={(typed) => {
        setTyped(typed);
        if (typed.trim().length > 0) setBy(typed.trim()).catch(report);
      }}
      hint={settings.byNote}
      error={isName ? null : settings.byMissing(store.by)}
    />
  );
}
