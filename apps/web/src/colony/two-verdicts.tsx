import type { ColonyOutlook, Settings } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import { OwnRule } from '../verdict/own-rule.tsx';

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
  const { broodlessKg, broodKg, reserveKg, doubtKg } = line.needParts;
  const parts = [
    [broodlessKg, colony.parts.broodlessKg],
    [broodKg, colony.parts.broodKg],
    [reserveKg, colony.parts.reserveKg],
    [doubtKg, colony.parts.doubtKg],
  ] as const;
  return (
    <section className="verdicts">
      <h2>{colony.rule.title}</h2>
      <OwnRule line={line} rule={rule} units={units} />
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
