import type { UnreadLine } from '@winterheft/core';
import { coreWords, words } from '../app/words.ts';

/** Lines that were kept but not read: which, why, and how they begin. */
export function UnreadLines({ lines, of }: { readonly lines: readonly UnreadLine[]; readonly of: number }) {
  return (
    <ul className="keep-list">
      {lines.map((line) => (
        <li key={`${line.line} ${line.text}`}>
          {coreWords.unreadLine(line)}
          <code>{line.text}</code>
        </li>
      ))}
      {of > lines.length ? <li>{words.keep.unreadMore(of - lines.length)}</li> : null}
    </ul>
  );
}
