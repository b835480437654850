import type { ColonyOutlook } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import { massShown } from '../verdict/figures.ts';
import { SourceKey } from './source-key.tsx';

/** How the reading of the whole hive will change until the end of the run. */
export function ScaleAhead({ line, units, to }: { readonly line: ColonyOutlook; readonly units: UnitFormat; readonly to: string }) {
  const { colony } = words;
  const change = (kg: number) => (kg <= 0 ? colony.scaleLighter(massShown(-kg, units)) : colony.scaleHeavier(massShown(kg, units)));
  const { p5, p50, p95 } = line.scaleKg;
  return (
    <section>
      <div className="section-head">
        <h2>{colony.scaleTitle}</h2>
        <SourceKey group="weigh" />
      </div>
      <p>{colony.scale(to, change(p50), change(p5), change(p95))}</p>
    </section>
  );
}
