import type { ColonyOutlook, YardDates } from '@winterheft/core';
import { dayMonth, listed } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import type { Outlooks } from '../plan/use-plan.ts';

interface AboutProps {
  readonly lines: readonly ColonyOutlook[];
  readonly dates: readonly YardDates[];
  readonly made: Outlooks['made'];
  readonly yardName: (id: string) => string;
}

/** How the chart is read, what it was made from, and where it goes beyond what was measured. */
export function AboutPlan({ lines, dates, made, yardName }: AboutProps) {
  const { outlook } = words;
  const { extrapolating } = coreWords.outlook;
  const whys = [...new Set(lines.flatMap((line) => line.extrapolatingBecause))];
  return (
    <div className="outlook-about">
      <details>
        <summary>{outlook.legendTitle}</summary>
        <svg className="legend-needles" viewBox="0 0 150 26" width="150" height="26" aria-hidden="true">
          <rect className="band" x="52" y="6" width="84" height="18" />
          <path className="open-end" d="M136 6l7 9-7 9z" />
          <path className="holds holds-short" d="M2 24H46" />
          <path className="needle-tall" d="M46 3V24M58 3V24M68 3V24" />
          <path className="needle-short" d="M78 14V24M86 14V24M94 14V24M104 14V24M116 14V24M128 14V24" />
          <circle className="middle-case" cx="94" cy="24" r="3" />
        </svg>
        <ul className="dashes">
          {outlook.legend.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </details>
      <details>
        <summary>{outlook.madeTitle}</summary>
        <ul className="dashes">
          <li>{outlook.made(dayMonth(made.today, true), made.members, made.seed, coreWords.chanceWords(made.certaintyFrac))}</li>
          {dates.map((yard) => {
            const forage = yard.dates['firstForage'];
            const on = (day: string | null) => (day === null ? outlook.after(dayMonth(made.to)) : dayMonth(day));
            return forage === undefined ? null : (
              <li key={yard.yard}>
                {outlook.madeForage(yardName(yard.yard), on(forage.p10), on(forage.p50), on(forage.p90))}{' '}
                {outlook.madeClimate(yardName(yard.yard), yard.climate.name)}
              </li>
            );
          })}
          {whys.length === 0 ? <li>{outlook.notExtrapolated}</li> : null}
          {whys.map((why) => {
            const who = lines.filter((line) => line.extrapolatingBecause.includes(why));
            const names =
              who.length === lines.length
                ? outlook.everyColony
                : listed(
                    who.map((line) => line.label),
                    outlook.listAnd,
                    40,
                  );
            return <li key={why}>{outlook.extrapolated(extrapolating[why], names)}</li>;
          })}
        </ul>
      </details>
    </div>
  );
}
