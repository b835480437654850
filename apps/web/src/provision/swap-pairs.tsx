import { words } from '../app/words.ts';
import type { Flow } from '../walk/hand.ts';
import type { Names } from '../walk/naming.ts';
import type { Stop } from '../walk/stop.ts';

interface Pair {
  readonly count: number;
  readonly from: string | null;
  readonly inKg: number | null;
  readonly outKg: number | null;
}

/** Comb by comb: what goes in and from where, what comes out, and what the hive gains by it. */
export function SwapPairs({ stop, names }: { readonly stop: Stop; readonly names: Names }) {
  const { pairHeads, pairNone, pairsTitle } = words.provision;
  const { mass, massUnit } = names.units;
  return (
    <table className="pairs">
      <caption className="visually-hidden">{pairsTitle}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="visually-hidden">{pairHeads.count}</span>
          </th>
          <th scope="col">{pairHeads.in}</th>
          <th scope="col">{pairHeads.out}</th>
          <th scope="col" className="pairs-gain">
            {pairHeads.gain(massUnit)}
          </th>
        </tr>
      </thead>
      <tbody>
        {pairsOf(stop.flows).map(({ count, from, inKg, outKg }) => {
          const gainKg = count * ((inKg ?? 0) - (outKg ?? 0));
          return (
            <tr key={`${from} ${inKg} ${outKg}`}>
              <td className="num">{count}</td>
              <td>
                {from === null || inKg === null ? (
                  pairNone
                ) : (
                  <>
                    <b>{names.origin(from)}</b> {mass(inKg)}
                  </>
                )}
              </td>
              <td>{outKg === null ? pairNone : mass(outKg)}</td>
              <td className="pairs-gain">
                <b>{`${gainKg < 0 ? '−' : '+'} ${names.tenths(Math.abs(gainKg))}`}</b>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** Like pairs told once. */
function pairsOf(flows: readonly Flow[]): readonly Pair[] {
  const pairs = new Map<string, Pair>();
  for (const { from, out, count, massKg = 0 } of flows) {
    const isTaken = 'colony' in from;
    const pair = {
      from: isTaken ? null : 'hand' in from ? from.hand : 'lot' in from ? from.lot : 'shed',
      inKg: isTaken ? null : massKg,
      outKg: isTaken ? massKg : (out?.massKg ?? null),
    };
    const key = JSON.stringify(pair);
    pairs.set(key, { ...pair, count: (pairs.get(key)?.count ?? 0) + count });
  }
  return [...pairs.values()];
}
