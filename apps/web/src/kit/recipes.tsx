import type { KitAnswer } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { lengthText } from './lengths.ts';

/** Candy, syrup and fill: amounts, how, and what to beware of. */
export function Recipes({ answer, units }: { readonly answer: KitAnswer; readonly units: UnitFormat }) {
  const of = words.kit;
  const say = coreWords.kit;
  const { candy, syrup, pieces } = answer;
  const fill = pieces?.fill ?? null;
  if (candy === null && syrup === null && fill === null) return null;
  return (
    <section>
      <h2>{of.recipes}</h2>
      <div className="kit-recipes">
        {candy === null ? null : (
          <div>
            <h3>{of.candyTitle}</h3>
            <p>{say.candy(candy.boards, units.mass(candy.sugarKg), units.mass(candy.waterKg))}</p>
            <p>{of.byWeight}</p>
            {candy.cook === null ? null : (
              <p>{say.cook(units.temp(candy.cook.hardC), units.temp(candy.cook.softC), units.temp(candy.cook.stirAtC))}</p>
            )}
            <p>{say.dry(String(candy.dryHours))}</p>
            <p>{say.on(units.temp(candy.onAboveC))}</p>
            <ul className="kit-cautions">
              {candy.cautions.map((code) => (
                <li key={code}>{say.cautions[code]}</li>
              ))}
            </ul>
          </div>
        )}
        {syrup === null ? null : (
          <div>
            <h3>{of.syrupTitle}</h3>
            <p>
              {say.syrup(
                units.volume(syrup.syrup.volumeL),
                units.mass(syrup.syrup.sugarKg),
                units.mass(syrup.syrup.waterKg),
                syrup.sugarBags,
                syrup.containers,
              )}
            </p>
            {syrup.grains ? <p>{say.grains}</p> : null}
            {syrup.jars === null ? null : (
              <p>
                {say.jars(
                  syrup.jars.atOnce,
                  syrup.jars.holes,
                  lengthText(syrup.jars.holeM, units),
                  String(Math.ceil(syrup.jars.daysNeeded)),
                )}
              </p>
            )}
            {syrup.jars === null || syrup.jars.leftPerHiveL === 0 ? null : (
              <p className="error">{say.left(units.volume(syrup.jars.leftPerHiveL))}</p>
            )}
            <p>{of.syrupCare}</p>
          </div>
        )}
        {fill === null ? null : (
          <div>
            <h3>{of.pellets}</h3>
            <p>{say.fill(units.mass(fill.kg), lengthText(fill.depthM, units))}</p>
          </div>
        )}
      </div>
    </section>
  );
}
