import type { LotLine } from './lot-answers.ts';

const STEP = 9;
const DEPTH_HEIGHT = { deep: 44, medium: 31, shallow: 26 } as const;

/** The rail in the shed: a stroke a comb, as long as its kind is deep; filled may be given on, hollow may not. A gap stands between lots. */
export function Rail({ lines, label }: { readonly lines: readonly LotLine[]; readonly label: string }) {
  let x = 6;
  const strokes = lines.flatMap(({ lot, frame, held }) => {
    const height = DEPTH_HEIGHT[frame ?? 'deep'];
    const start = x;
    const combs = Math.max(0, lot.count);
    x += combs * STEP + (combs > 0 ? STEP : 0);
    return Array.from({ length: combs }, (_, i) => ({ key: `${lot.id} ${i}`, x: start + i * STEP, height, held: held !== null }));
  });
  return (
    <div className="rail">
      <svg viewBox={`0 0 ${x} 54`} width={x} height="54" role="img" aria-label={label}>
        {strokes.map((stroke) => (
          <rect
            key={stroke.key}
            x={stroke.held ? stroke.x + 1 : stroke.x}
            y="4"
            width={stroke.held ? 4 : 6}
            height={stroke.height}
            className={stroke.held ? 'comb-held' : 'comb'}
          />
        ))}
        <path d={`M0 3H${x}`} className="rail-line" />
      </svg>
    </div>
  );
}
