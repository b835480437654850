const LARGEST_BYTES = 200 * 1024 * 1024;

export type ReadFile =
  | { readonly ok: true; readonly name: string; readonly text: string }
  | { readonly ok: false; readonly why: 'empty' | 'not-text' | 'unreadable' | 'too-big'; readonly says: string };

/** Reads a file as UTF-8 text; what is none is refused before the journal sees it. */
export async function readTextFile(file: Blob, name: string): Promise<ReadFile> {
  if (file.size > LARGEST_BYTES) return { ok: false, why: 'too-big', says: String(LARGEST_BYTES / 1024 / 1024) };
  try {
    const bytes = await file.arrayBuffer();
    if (bytes.byteLength === 0) return { ok: false, why: 'empty', says: '' };
    return { ok: true, name, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    if (error instanceof TypeError) return { ok: false, why: 'not-text', says: '' };
    return { ok: false, why: 'unreadable', says: error instanceof Error ? error.message : String(error) };
  }
}
