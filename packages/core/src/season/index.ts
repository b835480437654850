export { SEASON_DATES, type SeasonAnswer, type SeasonDate, type SeasonInput, season } from './season.ts';
