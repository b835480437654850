import type { At } from '@winterheft/core';

const two = (n: number) => String(n).padStart(2, '0');

/** Local calendar date of the device. */
export function todayIso(now = new Date()): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Date, time and zone for a record written now. */
export function atNow(now = new Date()): At {
  const east = -now.getTimezoneOffset();
  const zone = `${east < 0 ? '-' : '+'}${two(Math.floor(Math.abs(east) / 60))}:${two(Math.abs(east) % 60)}`;
  return { date: todayIso(now), time: `${two(now.getHours())}:${two(now.getMinutes())}`, zone };
}

/** `Fri 18 Sep`, as the header shows it. */
export function dayInWords(iso: string, language: string): string {
  const day = new Date(`${iso}T12:00:00`);
  return `${day.toLocaleDateString(language, { weekday: 'short' })} ${day.getDate()} ${day.toLocaleDateString(language, { month: 'short' })}`;
}
