import { useWidth } from '../ui/use-width.ts';
import type { BoxAtStop, Hangs } from '../walk/box.ts';

const SLOT = 8;
const EDGE = 5;
const ARROW = 12;

const KINDS = ['empty', 'light', 'capped', 'bank'] as const;
type Kind = (typeof KINDS)[number];

/** Slots as one path a kind: width and colour stand for what hangs there; an empty slot is ruled so that slots can be counted. */
class SlotPaths {
  private readonly byKind = new Map<Kind, string>();

  add(hangs: Hangs, path: string): void {
    const kind = hangs ?? 'empty';
    this.byKind.set(kind, `${this.byKind.get(kind) ?? ''}${path}`);
  }

  drawn() {
    return KINDS.map((kind) => <path key={kind} d={this.byKind.get(kind) ?? ''} className={`slot slot-${kind}`} />);
  }
}

function isTurned(box: BoxAtStop, slot: number): boolean {
  return box.before[slot] !== box.after[slot];
}

/** Whether more capped combs leave the box here than come into it: an arrow to the hive, else one into the box. */
function direction(box: BoxAtStop): 'out' | 'into' | 'none' {
  const capped = (slots: readonly Hangs[]) => slots.filter((hangs) => hangs === 'bank' || hangs === 'capped').length;
  const all = (slots: readonly Hangs[]) => slots.filter((hangs) => hangs !== null).length;
  const change = capped(box.after) - capped(box.before) || all(box.after) - all(box.before);
  return change < 0 ? 'out' : change > 0 ? 'into' : 'none';
}

/** A piece of the box beside one row: slots run downwards, as long as the row is high. The number counts capped combs after it. */
export function BoxPiece({ box, capped, isHere }: { readonly box: BoxAtStop; readonly capped: number; readonly isHere: boolean }) {
  const slots = box.after.length;
  const width = EDGE * 2 + slots * SLOT;
  const x = (slot: number) => EDGE + (slot + 0.5) * SLOT;
  const turned = box.after.flatMap((_, slot) => (isTurned(box, slot) ? [slot] : []));
  const way = direction(box);
  const paths = new SlotPaths();
  box.after.forEach((after, slot) => {
    paths.add(box.before[slot] ?? null, `M${x(slot)} 0V50`);
    paths.add(after, `M${x(slot)} 50V100`);
  });
  return (
    <span className="box-piece" aria-hidden="true">
      <span className="box-number">{capped === 0 ? '' : capped}</span>
      <svg className="box-lines" aria-hidden="true" viewBox={`0 0 ${width} 100`} width={width} height="100%" preserveAspectRatio="none">
        <rect x="0" y="0" width={width} height="100" className="box-floor" />
        {paths.drawn()}
        <path d={`M1 0V100M${width - 1} 0V100`} className="box-wall" />
        {isHere ? <path d={`M0 50H${width}`} className="box-here" /> : null}
        {turned.length === 0 ? null : <path d={`M${x(turned[0] as number)} 50H${width}`} className={`box-move box-move-${way}`} />}
      </svg>
      <svg className={`box-arrow box-arrow-${way}`} aria-hidden="true" viewBox="0 0 12 12" width={ARROW} height={ARROW}>
        {way === 'out' ? <path d="M1 0v12l10-6z" /> : way === 'into' ? <path d="M11 0v12L1 6z" /> : null}
      </svg>
    </span>
  );
}

/** A stop as the strip names it. */
export interface StripStop {
  readonly id: string;
  readonly label: string;
  readonly box: BoxAtStop;
}

/** The whole walk at a desk: slots run from left to right, a stop every so often. */
export function BoxStrip({ stops, here }: { readonly stops: readonly StripStop[]; readonly here: string | null }) {
  const [ref, width] = useWidth<HTMLDivElement>();
  return (
    <div className="strip" ref={ref}>
      {width === 0 || stops.length === 0 ? null : <Strip stops={stops} here={here} width={width} />}
    </div>
  );
}

function Strip({ stops, here, width }: { readonly stops: readonly StripStop[]; readonly here: string | null; readonly width: number }) {
  const boxes = stops.map(({ box }) => box);
  const slots = Math.max(0, ...boxes.map(({ after }) => after.length));
  const step = width / boxes.length;
  const top = 20;
  const bottom = top + slots * 9 + 6;
  const x = (stop: number) => (stop + 0.5) * step;
  const y = (slot: number) => bottom - 7 - slot * 9;
  const paths = new SlotPaths();
  boxes[0]?.before.forEach((hangs, slot) => {
    paths.add(hangs, `M0 ${y(slot)}H${x(0)}`);
  });
  boxes.forEach(({ after }, stop) => {
    after.forEach((hangs, slot) => {
      paths.add(hangs, `M${x(stop)} ${y(slot)}H${stop === boxes.length - 1 ? width : x(stop + 1)}`);
    });
  });
  return (
    <svg className="box-strip" viewBox={`0 0 ${width} ${bottom + 44}`} width={width} height={bottom + 44} aria-hidden="true">
      <rect x="0" y={top} width={width} height={bottom - top} className="box-floor" />
      {paths.drawn()}
      <path d={`M0 ${top}H${width}M0 ${bottom}H${width}`} className="box-wall" />
      {stops.map(({ id, label, box }, stop) => {
        const turned = box.after.flatMap((_, slot) => (isTurned(box, slot) ? [slot] : []));
        const way = direction(box);
        const capped = box.after.filter((hangs) => hangs === 'bank' || hangs === 'capped').length;
        return (
          <g key={id}>
            {id === here ? (
              <rect x={x(stop) - step / 2 + 1} y={bottom + 20} width={step - 2} height="22" className="box-strip-here" />
            ) : null}
            {turned.length === 0 ? null : (
              <path d={`M${x(stop)} ${y(Math.max(...turned)) - 4}V${bottom + 14}`} className={`box-move box-move-${way}`} />
            )}
            {way === 'out' ? (
              <path d={`M${x(stop) - 6} ${bottom + 8}h12l-6 10z`} className="box-arrow-out" />
            ) : way === 'into' ? (
              <path d={`M${x(stop) - 6} ${bottom + 18}h12l-6 -10z`} className="box-arrow-into" />
            ) : null}
            <text x={x(stop)} y={bottom + 37} textAnchor="middle" className="box-strip-label">
              {label}
            </text>
            {capped === 0 ? null : (
              <text x={Math.min(width - 8, x(stop) + step / 2)} y="14" textAnchor="middle" className="box-strip-number">
                {capped}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
