import { todayIso } from '../app/today.ts';

/** `winterheft-2026-09-18.jsonl`: one record a line. */
export function fileName(): string {
  return `winterheft-${todayIso()}.jsonl`;
}

/** Hands a text to the browser as a file to save. The browser does not tell whether it was. */
export function saveText(text: string, name = fileName()): string {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/x-ndjson' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The download has its own hold on the content once it has begun.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  return name;
}

/** A file for the phone's share sheet; share sheets take text files under names they know. */
function shareable(text: string): File {
  return new File([text], fileName().replace(/\.jsonl$/, '.txt'), { type: 'text/plain' });
}

export function canShare(): boolean {
  try {
    return typeof navigator.canShare === 'function' && navigator.canShare({ files: [shareable('')] });
  } catch {
    return false;
  }
}

/** The name of the file where a program took it; null where the sheet was closed. */
export async function share(text: string): Promise<string | null> {
  const file = shareable(text);
  try {
    await navigator.share({ files: [file] });
    return file.name;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null;
    throw error;
  }
}

/** What the share sheet has laid down for this page, taken away as it is read. */
export async function takeShared(): Promise<{ readonly file: Blob; readonly name: string } | null> {
  if (typeof caches === 'undefined') return null;
  const cache = await caches.open('winterheft-shared');
  const answer = await cache.match('shared-journal');
  if (answer === undefined) return null;
  await cache.delete('shared-journal');
  return { file: await answer.blob(), name: decodeURIComponent(answer.headers.get('X-Name') ?? 'journal') };
}
