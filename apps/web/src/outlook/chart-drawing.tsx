import type { ColonyOutlook } from '@winterheft/core';
import { type Axis, monthMarks, xOf } from '../verdict/axis.ts';
import { RowDrawing } from './chart-row.tsx';
import type { Forage } from './frame.ts';
import type { PlacedRow } from './layout.ts';

interface DrawingProps {
  readonly placed: readonly { readonly row: PlacedRow; readonly line: ColonyOutlook }[];
  readonly chosen: string | null;
  readonly axis: Axis;
  readonly forage: Forage;
  readonly width: number;
  readonly height: number;
  readonly twoLines: boolean;
}

/** All that is drawn of the rows, on one ground: months, forage with its spread, the chosen row, needles. */
export function ChartDrawing({ placed, chosen, axis, forage, width, height, twoLines }: DrawingProps) {
  return (
    <svg className="chart-drawing" viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <defs>
        <pattern id="forage-hatch" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V8" className="hatch" />
        </pattern>
      </defs>
      {monthMarks(axis, 0).map((mark) => (
        <path key={mark.x} className="grid" d={`M${mark.x} 0V${height}`} />
      ))}
      {forage.p10 === null || forage.p90 === null ? null : (
        <rect
          className="forage-band"
          x={xOf(axis, forage.p10)}
          y="0"
          width={Math.max(0, Math.min(axis.right, xOf(axis, forage.p90)) - xOf(axis, forage.p10))}
          height={height}
        />
      )}
      {placed.map(({ row, line }) =>
        row.colony === chosen ? (
          <rect
            key={row.colony}
            className={`chosen chosen-${line.state === 'short' ? 'short' : 'calm'}`}
            x="-6"
            y={row.top}
            width={width + 12}
            height={row.height}
          />
        ) : null,
      )}
      {placed.map(({ row, line }) => (
        <RowDrawing key={row.colony} line={line} row={row} axis={axis} twoLines={twoLines} />
      ))}
      {forage.days.map((day) => (
        <path key={day} className="forage-line" d={`M${xOf(axis, day)} 0V${height}`} />
      ))}
    </svg>
  );
}
