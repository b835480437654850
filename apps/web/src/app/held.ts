import { useSyncExternalStore } from 'react';

/** A value with readers: the smallest thing React needs to follow state that lives outside it. */
export class Held<T> {
  private value: T;
  private readonly readers = new Set<() => void>();

  constructor(value: T) {
    this.value = value;
  }

  readonly get = (): T => this.value;

  set(change: Partial<T>): void {
    this.value = { ...this.value, ...change };
    for (const read of this.readers) read();
  }

  readonly follow = (read: () => void): (() => void) => {
    this.readers.add(read);
    return () => this.readers.delete(read);
  };
}

export function useHeld<T>(held: Held<T>): T {
  return useSyncExternalStore(held.follow, held.get);
}
