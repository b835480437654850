const files = import.meta.glob<string>('../../../../demo/journal.jsonl', { query: '?url', import: 'default' });
const loadUrl = Object.values(files)[0];

/** Whether the build carries the demo holding. */
export const hasDemo = loadUrl !== undefined;

/** The demo holding's journal: invented, and the same in every build. */
export async function demoText(): Promise<string> {
  if (loadUrl === undefined) throw new Error('this build carries no demo holding');
  const answer = await fetch(await loadUrl());
  if (!answer.ok) throw new Error(`the demo holding could not be read (${answer.status})`);
  return answer.text();
}
