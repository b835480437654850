/** Lets what has been asked meanwhile be answered. */
export function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

/** ISO date of an epoch day. */
export function isoOf(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}
