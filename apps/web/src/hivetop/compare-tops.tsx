import { kit, type ShippedTop, type TopForecast } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { drafts } from '../app/session.ts';
import { coreWords, words } from '../app/words.ts';
import { useTops } from '../plan/use-tops.ts';
import { KIT_DRAFT, kitInput, readAnswers } from '../topkit/kit-answers.ts';

/** The four builds beside each other, run over the same winters. None is marked as better. */
export function CompareTops({ units }: { readonly units: UnitFormat }) {
  const of = words.hiveTop;
  const { tops, busy, fault } = useTops();
  const range = ({ p5, p50, p95 }: TopForecast['useKg'], text: (value: number) => string) => (
    <span>
      {text(p50)} <small>{of.range(text(p5), text(p95))}</small>
    </span>
  );
  const mass = (kg: number) => units.massOf(kg).toFixed(1);
  const days = (n: number) => String(Math.round(n));
  return (
    <section aria-busy={busy}>
      <h2>{of.compare}</h2>
      {busy ? (
        <p className="note" role="status">
          {of.busy}
        </p>
      ) : null}
      {fault === null ? null : <p className="error">{coreWords.faultSentence(fault)}</p>}
      {tops === null ? busy || fault !== null ? null : <p className="note">{of.noColonies}</p> : null}
      {tops === null ? null : (
        <>
          <p className="note">{of.compareWhat(tops.yard, tops.bees, dayMonth(tops.from, true), dayMonth(tops.to, true), tops.winters)}</p>
          <div className="table-room">
            <table className="top-table compare">
              <thead>
                <tr>
                  <th scope="col">{of.top}</th>
                  <th scope="col">{`${of.need}, ${units.massUnit}`}</th>
                  <th scope="col">{`${of.waterOut}, ${units.massUnit}`}</th>
                  <th scope="col">{`${of.dripped}, ${units.massUnit}`}</th>
                  <th scope="col">{of.wetDays}</th>
                  <th scope="col">{of.frostDays}</th>
                  <th scope="col">{of.full}</th>
                  <th scope="col">{of.cost}</th>
                </tr>
              </thead>
              <tbody>
                {tops.tops.map(({ key, forecast }) => (
                  <tr key={key}>
                    <th scope="row">{of.names[key]}</th>
                    <td data-head={of.need}>{mass(forecast.needKg)}</td>
                    <td data-head={of.waterOut}>{range(forecast.waterOutKg, mass)}</td>
                    <td data-head={of.dripped}>{range(forecast.waterDrippedKg, mass)}</td>
                    <td data-head={of.wetDays}>{range(forecast.wetLidDays, days)}</td>
                    <td data-head={of.frostDays}>{range(forecast.frostLidDays, days)}</td>
                    <td data-head={of.full}>{fullText(forecast)}</td>
                    <td data-head={of.cost}>{costText(key, units)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <p className="note">{of.pricesFrom}</p>
        </>
      )}
    </section>
  );
}

function fullText({ absorbentFull }: TopForecast): string {
  const of = words.hiveTop;
  if (absorbentFull === null) return of.noAbsorbent;
  const { p5, p50, fullFrac } = absorbentFull;
  const day = p50 ?? p5;
  return day === null ? of.never : of.inShare(dayMonth(day), `${Math.round(fullFrac * 100)} %`);
}

/** What one hive's share of the top comes to, by the prices typed under Kit: whole sheets and rolls for all its hives. */
function costText(top: ShippedTop, units: UnitFormat): string {
  const of = words.hiveTop;
  const draft = drafts.get(KIT_DRAFT);
  const answers = draft === null ? null : readAnswers(draft.value);
  if (answers === null) return of.noPrice;
  const { hives, frames, prices } = kitInput(answers, units.massUnit === 'lb');
  const list = kit({ hives, frames, prices, top });
  if (!list.ok || list.value.cost === null) return of.noPrice;
  const cost = (list.value.cost / list.value.hives).toFixed(2);
  return list.value.unpriced.length === 0 ? cost : of.costPart(cost);
}
