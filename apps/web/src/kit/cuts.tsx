import { type KIT_SIZES, type KitAnswer, type KitLine, kitParameters } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { lengthText } from './lengths.ts';

const WIDE = 400;

/** Pieces on the sheets and boards they are sawn from, to scale; hatched: left over. */
export function Cuts({ answer, units }: { readonly answer: KitAnswer; readonly units: UnitFormat }) {
  const of = words.kit;
  const cut = answer.lines.filter(({ sheetCut, boardCut }) => sheetCut !== null || boardCut !== null);
  if (cut.length === 0) return null;
  return (
    <section className="kit-cuts">
      <h2>{of.cuts}</h2>
      <div className="kit-sheets">
        {cut.map((line) =>
          line.sheetCut === null ? <Boards key={line.item} {...{ line, units }} /> : <Sheet key={line.item} line={line} />,
        )}
      </div>
    </section>
  );
}

function Sheet({ line }: { readonly line: KitLine }) {
  const { sheetCut, item, buyUnit } = line;
  if (sheetCut === null) return null;
  const size = (name: (typeof KIT_SIZES)[number]) => kitParameters[name].value;
  const [longM, wideM] =
    buyUnit === 'rolls' ? [size('meshRollLengthM'), size('meshRollWidthM')] : [size('sheetLengthM'), size('sheetWidthM')];
  const perM = WIDE / longM;
  const says = words.kit.sheet(
    coreWords.kit.items[item],
    sheetCut.fromOne,
    `${sheetCut.sheets} ${coreWords.kit.units[buyUnit]}`,
    sheetCut.over,
  );
  return (
    <figure>
      <svg viewBox={`-2 -2 ${WIDE + 4} ${wideM * perM + 4}`} className="cut" aria-hidden="true">
        <pattern id={`waste-${item}`} width="8" height="8" patternUnits="userSpaceOnUse">
          <path d="M0 8L8 0M-2 2L2 -2M6 10L10 6" className="cut-hatch" />
        </pattern>
        <rect width={WIDE} height={wideM * perM} fill={`url(#waste-${item})`} className="cut-edge" />
        {sheetCut.layout.map(({ xM, yM, lengthM, widthM }) => (
          <rect key={`${xM} ${yM}`} x={xM * perM} y={yM * perM} width={lengthM * perM} height={widthM * perM} className="cut-piece" />
        ))}
      </svg>
      <figcaption>{says}</figcaption>
    </figure>
  );
}

function Boards({ line, units }: { readonly line: KitLine; readonly units: UnitFormat }) {
  const boardM = kitParameters.boardLengthM.value;
  return line.boardCut?.map(({ heightM, patterns, atLeast }) => (
    <figure key={heightM}>
      <figcaption>{words.kit.boards(lengthText(heightM, units))}</figcaption>
      {patterns.map((pattern) => {
        const starts = pattern.piecesM.map((_, i) => pattern.piecesM.slice(0, i).reduce((sum, piece) => sum + piece, 0));
        return (
          <div key={pattern.piecesM.join(' ')}>
            <svg viewBox={`-2 -2 ${WIDE + 4} 20`} className="cut" aria-hidden="true">
              <rect width={WIDE} height={16} className="cut-edge cut-rest" />
              {pattern.piecesM.map((piece, i) => (
                <rect
                  key={starts[i]}
                  x={((starts[i] ?? 0) / boardM) * WIDE}
                  width={(piece / boardM) * WIDE}
                  height={16}
                  className="cut-piece"
                />
              ))}
            </svg>
            <p>
              {coreWords.kit.boardCut(
                pattern.boards,
                `${pattern.piecesM.map((piece) => lengthText(piece, units, false)).join(', ')} ${units.lengthUnit}`,
                lengthText(pattern.leftM, units),
              )}
            </p>
          </div>
        );
      })}
      <p className="note">{coreWords.kit.atLeast(atLeast)}</p>
    </figure>
  ));
}
