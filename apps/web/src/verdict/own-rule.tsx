import type { ColonyOutlook, Settings } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { figuresOf, massShown, verdictOf } from './figures.ts';

interface OwnRuleProps {
  readonly line: ColonyOutlook;
  readonly rule: Settings['ownRule'];
  readonly units: UnitFormat;
}

/** The keeper's own rule and the model on one colony, in a sentence; nothing where there is no rule or it does not fit the hive. */
export function OwnRule({ line, rule, units }: OwnRuleProps) {
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
  const withoutDoubtKg = line.hasKg === null ? null : line.hasKg - (line.needKg - line.needParts.doubtKg);
  return (
    <p className="own-rule">
      {colony.rule.yours(named, massShown(own.storesKg, units))} <b>{yours}</b>. {colony.rule.ours}{' '}
      <b>{line.hasKg === null ? coreWords.stateWords('unknown') : verdictOf(line, figuresOf(line, units))}</b>
      {withoutDoubtKg === null ? '' : ` ${withoutDoubt(withoutDoubtKg, units)}`}.
    </p>
  );
}

/** What stays of the verdict where nothing is doubted. */
function withoutDoubt(kg: number, units: UnitFormat): string {
  const { rule } = words.colony;
  if (Math.round(units.massOf(Math.abs(kg))) === 0) return rule.withoutEven;
  return rule.without(massShown(Math.abs(kg), units), kg < 0);
}
