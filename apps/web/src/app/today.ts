import type { At } from '@winterheft/core';
import { DEMO_DAY, isDemo } from './demo-flag.ts';

const two = (n: number) => String(n).padStart(2, '0');

/** Local calendar date of the device. */
export function todayIso(now = new Date()): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The day the plan is made for and records are written on: today, in the demo holding the day of its round. */
export function planDay(): string {
  return isDemo ? DEMO_DAY : todayIso();
}

/** The demo holding's round ends in the afternoon of its day; what is recorded there comes after it, whatever this device's clock says. */
const DEMO_FROM = '16:00';
const DEMO_ZONE = '-05:00';

/** Date, time and zone for a record written now. */
export function atNow(now = new Date()): At {
  const east = -now.getTimezoneOffset();
  const zone = `${east < 0 ? '-' : '+'}${two(Math.floor(Math.abs(east) / 60))}:${two(Math.abs(east) % 60)}`;
  const time = `${two(now.getHours())}:${two(now.getMinutes())}`;
  return isDemo ? { date: DEMO_DAY, time: time < DEMO_FROM ? DEMO_FROM : time, zone: DEMO_ZONE } : { date: todayIso(now), time, zone };
}

/** `Fri 18 Sep`, as the header shows it. */
export function dayInWords(iso: string, language: string): string {
  const day = new Date(`${iso}T12:00:00`);
  return `${day.toLocaleDateString(language, { weekday: 'short' })} ${day.getDate()} ${day.toLocaleDateString(language, { month: 'short' })}`;
}
