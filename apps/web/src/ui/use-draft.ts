import { useCallback, useState } from 'react';
import { drafts } from '../app/session.ts';

/**
 * State that is on disk before the next paint: for everything somebody types. Comes back as it was after a call, a reload or a dead battery.
 *
 * key      one per entry; the same key in another place of the app is the same draft
 * read     the value of a stored draft, or null where it does not fit (an older version wrote it)
 */
export function useDraft<T>(key: string, initial: T, read: (stored: unknown) => T | null): readonly [T, (value: T) => void, () => void] {
  const [value, setValue] = useState<T>(() => {
    const draft = drafts.get(key);
    return (draft === null ? null : read(draft.value)) ?? initial;
  });
  const set = useCallback(
    (next: T) => {
      void drafts.set(key, next);
      setValue(next);
    },
    [key],
  );
  const clear = useCallback(() => {
    void drafts.clear(key);
  }, [key]);
  return [value, set, clear];
}
