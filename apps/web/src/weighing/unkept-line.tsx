import type { Holding } from '@winterheft/core';
import { unitFormat } from '@winterheft/words';
import { useEffect, useState } from 'react';
import { report, useHolding } from '../app/session.ts';
import { useUnitsName } from '../app/use-units.ts';
import { language, words } from '../app/words.ts';
import { markOf } from './typing.ts';
import { canBeKept, keep, typedWords, type Unkept, unkeptEntries } from './unkept.ts';

/** Readings that stand in the fields of the round only: said on every other screen, with a key that makes them records. */
export default function UnkeptLine() {
  const holding = useHolding();
  return holding === null ? null : <LineOf holding={holding} />;
}

function LineOf({ holding }: { readonly holding: Holding }) {
  const units = useUnitsName();
  const { unkept } = words.round;
  const [refused, setRefused] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const all = unkeptEntries({ holding, units });
  const ready = useReady(all, units);
  const [first] = all;
  if (first === undefined) return null;
  const sentence =
    all.length === 1
      ? unkept.one(first.label, typedWords(first, unitFormat(units).massUnit, markOf(language)))
      : unkept.many(all.length, all.map(({ label }) => label).join(', '));
  const keepAll = async () => {
    setBusy(true);
    for (const one of ready) {
      const refusal = await keep(one, { holding, units });
      if (refusal !== null) setRefused(`${one.label}: ${refusal}`);
    }
    setBusy(false);
  };
  const open = all.find((one) => !ready.includes(one)) ?? first;
  return (
    <div className="line" role="status">
      <p>
        {sentence}
        {refused === null ? null : <span className="error"> {refused}</span>}
      </p>
      <span className="keys">
        {ready.length === 0 ? null : (
          <button type="button" className="key key-solid" disabled={busy} onClick={() => keepAll().catch(report)}>
            {ready.length === all.length ? unkept.keep : unkept.keepSome(ready.length)}
          </button>
        )}
        <a className="key" href={`#/round/${open.hive}`}>
          {unkept.open(open.label)}
        </a>
      </span>
    </div>
  );
}

/** Those that can be kept as they stand; found out elsewhere, so that they come a moment later. */
function useReady(all: readonly Unkept[], units: Parameters<typeof canBeKept>[1]): readonly Unkept[] {
  const [ready, setReady] = useState<ReadonlySet<string>>(new Set());
  const names = all.map(nameOf).join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the names say what is in the list, which is a new one with each drawing
  useEffect(() => {
    let isCurrent = true;
    const ask = async () => {
      const found: string[] = [];
      for (const one of all) if (await canBeKept(one, units)) found.push(nameOf(one));
      if (isCurrent) setReady(new Set(found));
    };
    ask().catch(report);
    return () => {
      isCurrent = false;
    };
  }, [names, units]);
  return all.filter((one) => ready.has(nameOf(one)));
}

const nameOf = ({ hive, atMs }: Unkept) => `${hive}/${atMs}`;
