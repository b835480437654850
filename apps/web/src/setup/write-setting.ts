import type { SettingKey, Settings } from '@winterheft/core';
import { append, strike } from '../app/session.ts';
import { coreWords } from '../app/words.ts';
import { work } from '../background/client.ts';

/** Writes one setting of the holding; gives what is wrong with it as a sentence, or null. */
export async function writeSetting<K extends SettingKey>(key: K, value: NonNullable<Settings[K]>): Promise<string | null> {
  const written = await append([{ yard: '*', kind: 'setting', body: { key, value } }]);
  return written.ok ? null : coreWords.faultSentence(written.error);
}

/** Withdraws every record of a setting, so that it counts as never set. */
export async function withdrawSetting(key: SettingKey): Promise<void> {
  await strike(await (await work()).recordsOfSetting(key));
}
