import type { ColonyOutlook } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import { SourceKey } from './source-key.tsx';

interface NeedProps {
  readonly line: ColonyOutlook;
  readonly units: UnitFormat;
  readonly chance: string;
}

const PARTS = ['broodlessKg', 'broodKg', 'reserveKg', 'doubtKg'] as const;

/** What a need is made of, as a bar to scale with what the colony has under it. */
export function NeedParts({ line, units, chance }: NeedProps) {
  const { colony } = words;
  const { needKg, needParts, hasKg } = line;
  const most = Math.max(needKg, hasKg ?? 0);
  const percent = (kg: number) => `${Math.max(0, (100 * kg) / most)}%`;
  return (
    <section className="need">
      <div className="section-head">
        <h2>{colony.needsAtCertainty(units.mass(needKg), chance)}</h2>
        <SourceKey group="use" />
      </div>
      <div className="need-bar" aria-hidden="true">
        {PARTS.map((part) => (
          <span key={part} className={`need-${part}`} style={{ width: percent(needParts[part]) }} />
        ))}
      </div>
      {hasKg === null ? null : (
        <div className="need-has" aria-hidden="true">
          <span style={{ width: percent(hasKg) }} />
        </div>
      )}
      <dl className="need-list">
        {PARTS.map((part) => (
          <div key={part}>
            <dt>
              <span className={`need-swatch need-${part}`} aria-hidden="true" /> {colony.parts[part]}
            </dt>
            <dd className="num">{units.mass(needParts[part])}</dd>
          </div>
        ))}
        {hasKg === null ? null : (
          <div className="need-has-row">
            <dt>
              <span className="need-swatch need-swatch-has" aria-hidden="true" /> {colony.has}
            </dt>
            <dd className="num">{units.mass(hasKg, line.hasSdKg ?? 0)}</dd>
          </div>
        )}
      </dl>
    </section>
  );
}
