import { type ShippedTop, shippedTop, type TopAnswer } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import { useWidth } from '../ui/use-width.ts';
import { apart, layersOf, tens } from './section.ts';

const HEIGHT = 420;
const HEAD = 28;
/** Of the hive under the top that is drawn [m]: enough to see the bees. */
const BELOW_M = 0.09;

/** The top cut through, to scale in height, and beside it on the same heights the warmth of each face and where water settles. */
export function SectionPicture({
  top,
  answer,
  outsideC,
  units,
  label,
}: {
  readonly top: ShippedTop;
  readonly answer: TopAnswer;
  readonly outsideC: number;
  readonly units: UnitFormat;
  readonly label: string;
}) {
  const [ref, width] = useWidth<HTMLDivElement>();
  return (
    <div ref={ref} className="section-box">
      {width === 0 ? null : <Drawing {...{ top, answer, outsideC, units, label, width }} />}
    </div>
  );
}

function Drawing(props: {
  readonly top: ShippedTop;
  readonly answer: TopAnswer;
  readonly outsideC: number;
  readonly units: UnitFormat;
  readonly label: string;
  readonly width: number;
}) {
  const { top, answer, outsideC, units, width } = props;
  const of = words.hiveTop;
  const layers = layersOf(top, answer);
  const last = layers.at(-1);
  const highM = last === undefined ? 0 : last.lowM + last.thicknessM;
  const perM = (HEIGHT - HEAD - 6) / (highM + BELOW_M);
  const y = (heightM: number) => HEAD + (highM - heightM) * perM;
  const boxW = Math.round(width * 0.46);
  const wall = Math.max(6, boxW * 0.05);
  const inner = boxW - 2 * wall;
  const settles = answer.frostPointC ?? answer.dewPointC;
  const { lowC, highC, marks } = tens([outsideC, answer.insideC, settles, ...layers.flatMap(({ tempC, settlesC }) => [tempC, settlesC])]);
  const left = boxW + 26;
  const x = (tempC: number) => left + ((tempC - lowC) / (highC - lowC)) * (width - left - 22);
  const points: readonly (readonly [number, number])[] = [
    [answer.insideC, -BELOW_M],
    ...layers.map(({ tempC, lowM }) => [tempC, lowM] as const),
    [outsideC, highM],
  ];
  const dews: readonly (readonly [number, number])[] = [
    [settles, -BELOW_M],
    ...layers.map(({ settlesC, lowM }) => [settlesC, lowM] as const),
  ];
  const line = (all: readonly (readonly [number, number])[]) => all.map(([c, m]) => `${x(c)},${y(m)}`).join(' ');
  const named = layers.filter(({ material }) => material !== 'foil');
  const labelY = apart(
    named.map(({ lowM, thicknessM }) => y(lowM + thicknessM / 2) + 5),
    16,
    HEIGHT - 40,
  );
  const openings = holesOf(top);
  const fill = answer.places.find(({ place }) => place === 'fill');
  const corners = answer.places.find(({ place }) => place === 'upper corners');
  const figure = (tempC: number) => String(Math.round(units.tempOf(tempC))).replace('-', '−');
  return (
    <svg width={width} height={HEIGHT} role="img" aria-label={props.label} className="section">
      <Hatches />
      <rect x={0} y={y(0)} width={wall} height={HEIGHT - y(0)} className="sec-edge sec-wood" />
      <rect x={boxW - wall} y={y(0)} width={wall} height={HEIGHT - y(0)} className="sec-edge sec-wood" />
      <ellipse cx={boxW / 2} cy={HEIGHT} rx={inner * 0.3} ry={BELOW_M * perM * 0.8} className="sec-bees" />
      {corners?.wet || corners?.frost
        ? [wall, boxW - wall].map((cx) => (
            <circle key={cx} cx={cx} cy={y(0) + 7} r={8} className={corners.frost ? 'sec-frost' : 'sec-wet'} />
          ))
        : null}
      {layers.map((layer) => {
        const isLid = layer === last;
        const inset = isLid || layer.material === 'foil' ? 0 : wall;
        const height = Math.max(1.5, layer.thicknessM * perM);
        const top = y(layer.lowM + layer.thicknessM);
        const w = (boxW - 2 * inset) * layer.coversFrac;
        const isFill = layer.material === 'wood pellets' || layer.material === 'shavings';
        const settled = isFill && fill?.frost ? 'sec-frost' : isFill && fill?.wet ? 'sec-wet' : null;
        return (
          <g key={layer.lowM}>
            {isLid ? null : <rect x={0} y={top} width={boxW} height={height} className="sec-edge sec-rim" />}
            <rect x={inset} y={top} width={w} height={height} className={`sec-edge ${hatchOf(layer.material)}`} />
            {settled === null ? null : <rect x={inset} y={top} width={w} height={height} className={settled} />}
            {layer.wet || layer.frost ? (
              <rect x={inset} y={y(layer.lowM)} width={w} height={5} className={layer.frost ? 'sec-frost' : 'sec-wet'} />
            ) : null}
          </g>
        );
      })}
      {openings.map(({ heightM, tallM, right }) => {
        const tall = Math.max(4, tallM * perM);
        return (
          <rect
            key={`${heightM} ${right}`}
            x={right ? boxW - wall : 0}
            y={y(heightM) - tall / 2}
            width={wall}
            height={tall}
            className="sec-hole"
          />
        );
      })}
      {named.map(({ material, thicknessM, lowM }, i) => (
        <text key={lowM} x={wall + 8} y={labelY[i]} className="sec-label">
          {`${of.layers[material] ?? material} ${thickness(thicknessM, units)}`}
        </text>
      ))}
      <text x={boxW / 2} y={HEIGHT - 10} textAnchor="middle" className="sec-label">
        {of.bees}
      </text>
      {marks.map((mark) => (
        <g key={mark}>
          <line x1={x(mark)} x2={x(mark)} y1={HEAD} y2={HEIGHT} className={mark === 0 ? 'sec-zero' : 'sec-grid'} />
          <text x={x(mark)} y={16} textAnchor="middle" className="sec-mark">
            {figure(mark)}
          </text>
        </g>
      ))}
      <polyline points={line(dews)} className="sec-dew" />
      <polyline points={line(points)} className="sec-warm" />
      {points.map(([c, m], i) =>
        i > 0 && i < points.length - 1 && Math.abs(y(m) - y(points[i - 1]?.[1] ?? 0)) < 16 ? null : (
          <g key={m}>
            <circle cx={x(c)} cy={y(m) - (i === 0 ? 6 : 0)} r={4} className="sec-dot" />
            <text
              {...(x(c) > width - 60 ? { x: x(c) - 8, textAnchor: 'end' as const } : { x: x(c) + 8 })}
              y={y(m) + (i === 0 ? -6 : 12)}
              className="sec-figure"
            >
              {figure(c)}
            </text>
          </g>
        ),
      )}
    </svg>
  );
}

/** A hole as tall as drilled where the build does not say [m]. */
const DRILLED_M = 0.019;

/** Openings of the top by height: the first of a height in the left wall, any more in the right one. */
function holesOf(top: ShippedTop): readonly { readonly heightM: number; readonly tallM: number; readonly right: boolean }[] {
  const open = shippedTop(top).openings.filter(({ heightM }) => heightM > 0);
  return [...new Set(open.map(({ heightM }) => heightM))].flatMap((heightM) => {
    const same = open.filter((opening) => opening.heightM === heightM);
    return same.slice(0, 2).map(({ tallM }, i) => ({ heightM, tallM: tallM ?? DRILLED_M, right: i === 1 }));
  });
}

function thickness(thicknessM: number, units: UnitFormat): string {
  return units.lengthUnit === 'in' ? `${(thicknessM / 0.0254).toFixed(1)} in` : `${Math.round(thicknessM * 1000)} mm`;
}

function hatchOf(material: string): string {
  if (['eps', 'xps', 'polyiso'].includes(material)) return 'sec-foam';
  if (['wood pellets', 'shavings'].includes(material)) return 'sec-fill';
  if (material === 'air space') return 'sec-air';
  if (material === 'candy') return 'sec-candy';
  if (material === 'burlap' || material === 'foil') return 'sec-cloth';
  return 'sec-wood';
}

function Hatches() {
  return (
    <defs>
      <pattern id="hatch-wood" width="8" height="6" patternUnits="userSpaceOnUse">
        <rect width="8" height="6" className="hatch-ground" />
        <path d="M0 3H8" className="hatch" />
      </pattern>
      <pattern id="hatch-foam" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" className="hatch-ground" />
        <path d="M0 8L8 0M-2 2L2 -2M6 10L10 6" className="hatch" />
      </pattern>
      <pattern id="hatch-fill" width="12" height="8" patternUnits="userSpaceOnUse">
        <rect width="12" height="8" className="hatch-ground" />
        <path d="M1 3l4 -1M7 6l4 1" className="hatch" />
      </pattern>
      <pattern id="hatch-frost" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" className="hatch-ground-ice" />
        <path d="M4 1V7M1 4H7M2 2L6 6M6 2L2 6" className="hatch-frost" />
      </pattern>
    </defs>
  );
}
