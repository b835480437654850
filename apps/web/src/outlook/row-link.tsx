import type { ColonyOutlook } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import type { Outlooks } from '../plan/use-plan.ts';
import { StateShape } from '../ui/states.tsx';
import { type Figures, figuresOf, massShown, nextWords, rowSentence, signedAbove } from '../verdict/figures.ts';
import { shapeOf, waitsForLook } from '../verdict/groups.ts';
import type { Columns } from './frame.ts';
import type { PlacedRow } from './layout.ts';

interface RowLinkProps {
  readonly line: ColonyOutlook;
  readonly row: PlacedRow;
  readonly columns: Columns;
  readonly units: UnitFormat;
  readonly made: Outlooks['made'];
  readonly yard: string | null;
  readonly chosen: boolean;
  readonly tabStop: boolean;
  /** Without the error and the note: for sun mode. */
  readonly plain: boolean;
  /** Where the first needle stands [px]. */
  readonly first: number;
  readonly scale: number;
  readonly twoLines: boolean;
}

/** A row as a link, read as a sentence; the eye gets the figures beside the drawing. */
export function RowLink(props: RowLinkProps) {
  const { line, row, columns, units, made, yard, chosen, tabStop, scale } = props;
  const figures = figuresOf(line, units);
  const later = line.cases === null ? 0 : line.cases.filter((day) => day === null || day > made.to).length;
  return (
    <li className={props.twoLines && !row.sliver ? 'two-lines' : undefined} style={{ top: row.top, height: row.height }}>
      <a
        className={`chart-row${chosen ? ' chart-row-chosen' : ''}`}
        href={`#/colony/${encodeURIComponent(line.colony)}`}
        data-colony={line.colony}
        aria-current={chosen ? 'true' : undefined}
        tabIndex={tabStop ? 0 : -1}
      >
        <span className="visually-hidden">{rowSentence(line, { units, certaintyFrac: made.certaintyFrac, to: made.to, yard })}</span>
        {row.sliver ? null : (
          <span aria-hidden="true">
            <StateShape shape={shapeOf(line)} size={(props.plain ? 16 : 12) * scale} />
            <b className="row-label">{line.label}</b>
            <RowFigures {...props} figures={figures} />
            {columns.desk === null ? null : (
              <>
                <span className="row-later" style={{ left: columns.right + 11 }}>
                  {later === 0 ? '' : later}
                </span>
                <span className="row-chances" style={{ left: columns.desk.chances, width: 12 * scale }}>
                  {line.chancesIn20 ?? '?'}
                </span>
                <span className="row-next" style={{ left: columns.desk.next }}>
                  {nextWords(line, units)}
                </span>
              </>
            )}
            <span
              className={`row-above row-above-${line.state === 'short' ? 'short' : line.state === 'enough' ? 'enough' : 'other'}`}
              style={{ insetInlineEnd: `calc(100% - ${columns.aboveEnd}px)` }}
            >
              {signedAbove(line, figures)}
            </span>
          </span>
        )}
      </a>
    </li>
  );
}

/** Has, error and need in the quiet part of the row; the note joins where it fits before the first needle. */
function RowFigures({ line, columns, units, plain, first, scale, figures, twoLines }: RowLinkProps & { readonly figures: Figures }) {
  const { outlook } = words;
  const { has, sd, need } = figures;
  const full = has === null || sd === null ? outlook.figuresUnknown(need) : outlook.figures(has, sd, need);
  const short = has === null ? full : outlook.figuresPlain(has, need);
  const letter = (plain ? 8.6 : 6.6) * scale;
  const space = twoLines ? columns.right - columns.left : first - columns.left - 4;
  const text = plain || full.length * letter > space ? short : full;
  const note = noteOf(line, units);
  const fits = note !== null && !plain && (text.length + note.length + 2) * letter < space;
  return (
    <span className="row-figures" style={{ left: columns.left + 3 }}>
      {text}
      {fits ? <b>{note}</b> : null}
    </span>
  );
}

function noteOf(line: ColonyOutlook, units: UnitFormat): string | null {
  const { outlook } = words;
  if (waitsForLook(line)) return outlook.broodNotLooked;
  const low = line.low ? line.notes.find((note) => note.code === 'low-in-top-box') : undefined;
  return low === undefined ? null : outlook.onlyAtCluster(massShown(low.holdsKg, units));
}
