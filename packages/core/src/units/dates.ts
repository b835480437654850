/** Days are counted from 1970-01-01 (epoch day 0) in the local calendar of the yard; no clock, no zone. */

/** Epoch day of an ISO calendar date, or null where the text is not one that exists. Valid 1900 to 2199. */
export function epochDayOf(iso: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
  if (!match) return null;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (year < 1900 || year > 2199 || month < 1 || month > 12 || day < 1 || day > 31) return null;
  const epochDay = epochDayOfParts(year, month, day);
  return isoDateOf(epochDay) === iso ? epochDay : null;
}

/** Epoch day of year, month (1 to 12) and day. Days-from-civil of Hinnant, "chrono-compatible low-level date algorithms" (from memory). */
export function epochDayOfParts(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

/** Year, month (1 to 12) and day of an epoch day. */
export function partsOf(epochDay: number): { readonly year: number; readonly month: number; readonly day: number } {
  const z = epochDay + 719468;
  const era = Math.floor(z / 146097);
  const doe = z - era * 146097;
  const yoe = Math.floor((doe - Math.floor(doe / 1460) + Math.floor(doe / 36524) - Math.floor(doe / 146096)) / 365);
  const doy = doe - (365 * yoe + Math.floor(yoe / 4) - Math.floor(yoe / 100));
  const mp = Math.floor((5 * doy + 2) / 153);
  const month = mp < 10 ? mp + 3 : mp - 9;
  return { year: yoe + era * 400 + (month <= 2 ? 1 : 0), month, day: doy - Math.floor((153 * mp + 2) / 5) + 1 };
}

/** ISO calendar date of an epoch day. */
export function isoDateOf(epochDay: number): string {
  const { year, month, day } = partsOf(epochDay);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
