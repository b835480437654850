export { type AppWords, appEnglish } from './app.ts';
export { type FigureWords, figures } from './app-figures.ts';
export type { Caution } from './english/cautions.ts';
export type { Naming } from './english/provision.ts';
export { type Allowed, type Fault, type InputFault, unitOfField, type Wanted } from './fault.ts';
export { english, type SharedWords, shared, type Words } from './language.ts';
export { calendarEvents, dateEvents } from './season-calendar.ts';
export { columnsOf, listed, plainText, shortened } from './text.ts';
export {
  dayMonth,
  dayMonthOf,
  decimals,
  monthName,
  placesFor,
  significant,
  UNITS,
  type UnitFormat,
  type Units,
  unitFormat,
} from './units.ts';
