import type { ColonyOutlook, Settings } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { figuresOf, massShown, verdictOf } from '../verdict/figures.ts';

interface VerdictsProps {
  readonly line: ColonyOutlook;
  readonly rule: Settings['ownRule'];
  readonly units: UnitFormat;
}

/** The keeper's own rule and the model on the same colony, and why they differ. */
export function TwoVerdicts({ line, rule, units }: VerdictsProps) {
  const { colony } = words;
  const own = line.ownRule;
  if (rule === undefined || own === null) return null;
  const named =
    rule.grossKg !== undefined ? colony.rule.gross(massShown(rule.grossKg, units)) : colony.rule.front(massShown(rule.frontKg ?? 0, units));
  const overKg = line.hasKg === null ? null : line.hasKg - own.storesKg;
  const yours =
    overKg === null
      ? colony.rule.unknown
      : overKg >= 0
        ? colony.rule.over(massShown(overKg, units))
        : colony.rule.under(massShown(-overKg, units));
  const { broodlessKg, broodKg, reserveKg, doubtKg } = line.needParts;
  const withoutDoubtKg = line.hasKg === null ? null : line.hasKg - (line.needKg - doubtKg);
  const parts = [
    [broodlessKg, colony.parts.broodlessKg],
    [broodKg, colony.parts.broodKg],
    [reserveKg, colony.parts.reserveKg],
    [doubtKg, colony.parts.doubtKg],
  ] as const;
  return (
    <section className="verdicts">
      <h2>{colony.rule.title}</h2>
      <p>
        {colony.rule.yours(named, massShown(own.storesKg, units))} <b>{yours}</b>. {colony.rule.ours}{' '}
        <b>{line.hasKg === null ? coreWords.stateWords('unknown') : verdictOf(line, figuresOf(line, units))}</b>
        {withoutDoubtKg === null ? '' : ` ${colony.rule.without(massShown(Math.abs(withoutDoubtKg), units), withoutDoubtKg < 0)}`}.
      </p>
      <p className="note">
        {colony.rule.whyMore(
          units.mass(line.needKg),
          units.mass(own.storesKg),
          parts.map(([kg, name]) => `${name} ${units.mass(kg)}`).join(', '),
        )}
      </p>
    </section>
  );
}
