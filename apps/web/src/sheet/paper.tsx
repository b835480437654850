import { words } from '../app/words.ts';
import { WordMark } from '../ui/icons.tsx';
import { StateShape } from '../ui/states.tsx';
import type { SheetPage } from './pages.ts';
import type { SheetRow } from './rows.ts';

export interface PaperHead {
  readonly made: string;
  readonly stopAt: string;
  readonly record: string;
  /** Name of each yard with its dates. */
  readonly yards: ReadonlyMap<string, { readonly name: string; readonly dates: string }>;
}

/** Kinds of columns from left to right, and how many of each stand beside each other; the style sheet has their widths. */
const COLUMNS = [
  ['label', 1],
  ['state', 1],
  ['last', 1],
  ['needs', 1],
  ['above', 1],
  ['stop', 2],
  ['reading', 2],
  ['count', 3],
  ['brood', 2],
  ['notes', 1],
] as const;

/** One page of the sheet, in millimetres; the same on the screen and on the paper. */
export function Paper({
  page,
  n,
  of,
  head,
}: {
  readonly page: SheetPage<SheetRow>;
  readonly n: number;
  readonly of: number;
  readonly head: PaperHead;
}) {
  const { sheet } = words;
  const { columns, blanks } = sheet;
  return (
    <section className="paper" aria-label={sheet.page(n, of)}>
      <div className="paper-head">
        <WordMark />
        <p>
          {head.made}
          <br />
          {head.stopAt}
        </p>
        <p className="paper-of">
          {sheet.page(n, of)}
          <br />
          {head.record}
        </p>
      </div>
      <dl className="paper-blanks">
        {Object.entries(blanks).map(([name, label]) => (
          <div key={name} className={`paper-blank-${name}`}>
            <dt>{label}</dt>
            <dd />
          </div>
        ))}
      </dl>
      <table className="paper-table">
        <colgroup>
          {COLUMNS.map(([name, times]) => (
            <col key={name} className={`paper-${name}`} span={times} />
          ))}
        </colgroup>
        <thead>
          <tr>
            <th rowSpan={2} scope="col">
              {columns.label}
            </th>
            <th rowSpan={2} scope="col">
              {columns.state}
            </th>
            <th rowSpan={2} scope="col">
              {columns.last}
            </th>
            <th rowSpan={2} scope="col" className="paper-end">
              {columns.needs}
            </th>
            <th rowSpan={2} scope="col" className="paper-end">
              {columns.above}
            </th>
            <th colSpan={2} scope="colgroup" className="paper-group">
              {columns.stop}
            </th>
            <th colSpan={2} scope="colgroup" className="paper-group">
              {columns.read}
            </th>
            <th rowSpan={2} scope="col" className="paper-middle">
              {columns.bees}
            </th>
            <th colSpan={2} scope="colgroup" className="paper-group">
              {columns.capped}
            </th>
            <th colSpan={2} scope="colgroup" className="paper-group">
              {columns.brood}
            </th>
            <th rowSpan={2} scope="col">
              {columns.notes}
            </th>
          </tr>
          <tr>
            <th scope="col" className="paper-end">
              {columns.front}
            </th>
            <th scope="col" className="paper-end">
              {columns.rear}
            </th>
            <th scope="col" className="paper-middle">
              {columns.front}
            </th>
            <th scope="col" className="paper-middle">
              {columns.rear}
            </th>
            <th scope="col" className="paper-middle">
              {columns.top}
            </th>
            <th scope="col" className="paper-middle">
              {columns.below}
            </th>
            <th scope="col" className="paper-middle">
              {columns.clean}
            </th>
            <th scope="col" className="paper-middle">
              {columns.signs}
            </th>
          </tr>
        </thead>
        {page.map(({ yard, rows }) => (
          <tbody key={yard}>
            <tr className="paper-yard">
              <th colSpan={15} scope="rowgroup">
                <strong>{head.yards.get(yard)?.name}</strong> {head.yards.get(yard)?.dates}
              </th>
            </tr>
            {rows.map((row) => (
              <Row key={row.hive} row={row} />
            ))}
          </tbody>
        ))}
      </table>
      <div className="paper-foot">
        <p>
          {sheet.foot} {sheet.typeBack}
        </p>
        <p className="paper-notes">{sheet.notes}</p>
      </div>
    </section>
  );
}

function Row({ row }: { readonly row: SheetRow }) {
  return (
    <tr className={row.isShort ? 'paper-row paper-short' : 'paper-row'}>
      <th scope="row" className="num">
        {row.label}
      </th>
      <td>
        <span className="paper-shape">
          {row.shape === null ? null : <StateShape shape={row.shape} size={11} />} {row.state}
        </span>
      </td>
      <td>
        <span className="paper-last">
          {row.last.map((reading) => (
            <span key={reading.edge}>{reading.text}</span>
          ))}
          <small>{row.lastDay}</small>
        </span>
      </td>
      <td className="paper-figure">{row.needs}</td>
      <td className="paper-figure paper-above">{row.above}</td>
      <td className="paper-figure num">{row.stopFront}</td>
      <td className="paper-figure num">{row.stopRear}</td>
      <td className="paper-empty" />
      <td className="paper-empty" />
      <td className="paper-empty" />
      <td className="paper-empty" />
      <td className="paper-empty" />
      <td className="paper-empty paper-tick" />
      <td className="paper-empty paper-tick" />
      <td className="paper-empty" />
    </tr>
  );
}
