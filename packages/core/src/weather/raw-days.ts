import type { RawDay, RejectedLine, RejectedWhy } from './station-types.ts';

export type Element = 'mean' | 'max' | 'min';

/** Days as they are read, line by line; a day that comes a second time is refused and told. */
export class RawDays {
  readonly days = new Map<number, RawDay>();
  readonly rejected: RejectedLine[] = [];

  reject(line: number, why: RejectedWhy): void {
    this.rejected.push({ line, why });
  }

  /** A value of a day; undefined: missing in the file, which is no fault of the line. */
  add(line: number, day: number, element: Element, value: number | undefined): void {
    if (value === undefined) return;
    if (Number.isNaN(value)) {
      this.reject(line, 'not-a-number');
      return;
    }
    const known = this.days.get(day);
    if (known === undefined) this.days.set(day, { line, day, [element]: value });
    else if (known[element] === undefined) known[element] = value;
    else this.reject(line, 'repeated-day');
  }
}
