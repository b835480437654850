import type { ColonyOutlook, EndedColony, YardDates } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { type ReactNode, useMemo, useRef, useState } from 'react';
import { words } from '../app/words.ts';
import type { Outlooks } from '../plan/use-plan.ts';
import { StateShape } from '../ui/states.tsx';
import { useWidth } from '../ui/use-width.ts';
import { xOf } from '../verdict/axis.ts';
import { limitWords } from '../verdict/figures.ts';
import { type Group, type GroupName, headlineOf } from '../verdict/groups.ts';
import { ChartAxis } from './chart-axis.tsx';
import { ChartDrawing } from './chart-drawing.tsx';
import { useArrows, useKeptInView, useTaps } from './chart-hands.ts';
import { axisFor, columnsOf, forageOf, needsTwoLines } from './frame.ts';
import { GroupHead } from './group-head.tsx';
import { layOut, nearestRow, shownInSun } from './layout.ts';
import { RowLink } from './row-link.tsx';
import { curveOn, useYardCurve } from './temperature.ts';
import { useRoom } from './use-room.ts';

export interface ChartProps {
  readonly groups: readonly Group[];
  readonly ended: readonly EndedColony[];
  readonly dates: readonly YardDates[];
  readonly made: Outlooks['made'];
  readonly units: UnitFormat;
  readonly sun: boolean;
  /** Name of a colony's yard where rows of several are shown. */
  readonly yardOf: (line: ColonyOutlook) => string | null;
  /** The yard whose mean temperature is drawn; null: none. */
  readonly yard: { readonly latDeg: number; readonly lonDeg: number; readonly elevM: number | null } | null;
  readonly chosen: string | null;
  readonly onChoose: (colony: string) => void;
  readonly onOpen: (colony: string) => void;
  /** What stands left above the rows. */
  readonly corner: ReactNode;
}

const AXIS = 58;
const ENDED = 17;
const OTHERS = 40;
const LARGE_TEXT = 1.5;
/** Width of the figures of a row at the usual size of text [px]. */
const FIGURES = 128;

/** Which of them run out, and when: a row per colony on one axis of days. */
export default function RunOutChart(props: ChartProps) {
  const { groups, dates, made, units, sun, yardOf, chosen, onChoose, onOpen } = props;
  const [ref, width] = useWidth<HTMLDivElement>();
  const body = useRef<HTMLDivElement>(null);
  const rows = useRef<HTMLDivElement>(null);
  const room = useRoom(body, '.outlook-foot, .bar-below', width);
  const [opened, setOpened] = useState<ReadonlySet<GroupName>>(new Set());
  const { scale, wide } = room;
  const columns = columnsOf(width, { scale, wide, sun });
  const axis = axisFor(columns, made);
  const shown = useMemo(() => (sun ? shownInSun(groups) : groups), [groups, sun]);
  const lines = useMemo(() => new Map(shown.flatMap((group) => group.lines.map((line) => [line.colony, line] as const))), [shown]);
  const twoLines = width > 0 && needsTwoLines([...lines.values()], axis, FIGURES * scale);
  const ended = sun ? [] : props.ended;
  const calm = sun ? groups.reduce((n, group) => n + (shown.includes(group) ? 0 : group.lines.length), 0) : 0;
  const below = (ended.length * ENDED + (calm > 0 ? OTHERS : 0)) * scale;
  const layout = layOut(shown, { height: room.height, scale, sun, twoLines, opened, below });
  // Text so large that a few rows would fill the view: the page scrolls, not a window in it.
  const scrollsInside = layout.scrolls && scale < LARGE_TEXT;
  const forage = forageOf(dates, made.to);
  const winter = useYardCurve(props.yard, made.from);
  const axisHeight = AXIS * scale;
  const { atRisk } = headlineOf(
    groups.flatMap((group) => group.lines),
    made.certaintyFrac,
  );

  const choose = (y: number) => {
    const row = nearestRow(layout.rows, y);
    if (row === null) return;
    if (wide && row.colony === chosen) onOpen(row.colony);
    else onChoose(row.colony);
  };
  useTaps(body, rows, choose);
  useArrows(
    rows,
    layout.rows.map((row) => row.colony),
    { chosen, onChoose },
  );
  useKeptInView(
    body,
    layout.rows.find((row) => row.colony === chosen),
    scrollsInside,
  );

  const fold = (name: GroupName) => {
    const next = new Set(opened);
    if (!next.delete(name)) next.add(name);
    setOpened(next);
  };
  const placed = layout.rows.map((row) => ({ row, line: lines.get(row.colony) as ColonyOutlook }));
  const tabStop = lines.has(chosen ?? '') ? chosen : layout.rows[0]?.colony;
  return (
    <div className={`chart${sun ? ' chart-sun' : ''}`} ref={ref}>
      <div className="chart-top" style={{ height: axisHeight }}>
        {props.corner}
        {width === 0 ? null : (
          <ChartAxis
            axis={axis}
            forage={forage}
            width={width}
            height={axisHeight}
            scale={scale}
            wide={wide}
            to={made.to}
            curve={sun || winter === null ? null : curveOn(winter, axis, { units, top: 17 * scale, bottom: axisHeight - 19 * scale })}
          />
        )}
        <span className="chart-unit" style={{ right: width - columns.aboveEnd }}>
          {units.massUnit}
        </span>
        {columns.desk === null ? null : (
          <>
            <span
              className="chart-head"
              style={{ left: columns.desk.chances, width: columns.aboveEnd - columns.desk.chances - 62 * scale }}
            >
              {words.outlook.chancesHead.map((word) => (
                <span key={word}>{word}</span>
              ))}
            </span>
            <span className="chart-head chart-head-next" style={{ left: columns.desk.next }}>
              {words.outlook.nextHead}
            </span>
          </>
        )}
      </div>
      <div className="chart-body" ref={body} style={{ height: scrollsInside ? room.height : layout.height }}>
        <div className="chart-rows" ref={rows} style={{ height: layout.height }}>
          {width === 0 ? null : (
            <ChartDrawing
              placed={placed}
              chosen={chosen}
              axis={axis}
              forage={forage}
              width={width}
              height={layout.height}
              twoLines={twoLines}
            />
          )}
          {layout.heads.map((head) => {
            const group = shown.find((one) => one.name === head.name) as Group;
            const own = placed.filter(({ line }) => group.lines.includes(line));
            return (
              <section key={head.name} aria-labelledby={`group-${head.name}`}>
                <GroupHead
                  head={head}
                  group={group}
                  left={columns.left}
                  units={units}
                  made={made}
                  wide={wide}
                  sun={sun}
                  atRisk={atRisk}
                  onFold={() => fold(head.name)}
                />
                <ol>
                  {own.map(({ row, line }) => (
                    <RowLink
                      key={row.colony}
                      line={line}
                      row={row}
                      columns={columns}
                      units={units}
                      made={made}
                      yard={yardOf(line)}
                      chosen={row.colony === chosen}
                      tabStop={row.colony === tabStop}
                      plain={sun}
                      first={line.cases?.[0] == null ? axis.right : xOf(axis, line.cases[0])}
                      scale={scale}
                      twoLines={twoLines}
                    />
                  ))}
                </ol>
              </section>
            );
          })}
          {calm === 0 ? null : (
            <p className="outlook-others" style={{ top: layout.height - below, height: below }}>
              <StateShape shape="enough" size={18} /> {words.outlook.others(calm, limitWords(made.certaintyFrac))}
            </p>
          )}
          {ended.length === 0 ? null : (
            <ul className="chart-ended" aria-label={words.outlook.groups.ended()}>
              {ended.map((colony, i) => (
                <li key={colony.colony} style={{ top: layout.height - below + i * ENDED * scale, height: ENDED * scale }}>
                  <StateShape shape="ended" size={11 * scale} />
                  <b>{colony.label}</b>
                  <span style={{ left: columns.left + 3 }}>
                    {words.outlook.endedLine(words.outlook.endedHow[colony.how] ?? colony.how, dayMonth(colony.on))}
                  </span>
                </li>
              ))}
            </ul>
          )}
        </div>
      </div>
    </div>
  );
}
