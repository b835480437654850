import type { KitAnswer, KitLine } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import type { KitAnswers } from '../topkit/kit-answers.ts';
import { Field } from '../ui/field.tsx';
import { lengthText } from './lengths.ts';

/** One row a thing: what is needed, what lies in the shed, what is bought, at the keeper's price. */
export function KitList({
  answer,
  answers,
  set,
  units,
}: {
  readonly answer: KitAnswer;
  readonly answers: KitAnswers;
  readonly set: (change: Partial<KitAnswers>) => void;
  readonly units: UnitFormat;
}) {
  const of = words.kit;
  return (
    <section>
      <h2>{of.list}</h2>
      <ul className="ledger kit-list">
        {answer.lines.map((line) => {
          const name = coreWords.kit.items[line.item];
          const weighed = line.unit === 'kg';
          const amount = (value: number) => (weighed ? units.mass(value) : String(value));
          return (
            <li key={line.item} className="kit-line">
              <span className="kit-what">
                <strong>{name}</strong> <small>{pieceText(line, units)}</small>
              </span>
              <span className="kit-need">
                <Stock line={line} /> {`${of.need} ${amount(line.need)}`}
                {line.more > 0 ? `, ${amount(line.more)} ${of.more}` : ''}
              </span>
              <strong className="kit-buy">
                {line.buy === 0 ? of.allThere : `${of.buy} ${line.buy} ${coreWords.kit.units[line.buyUnit]}`}
              </strong>
              <Field
                label={of.have}
                aria-label={of.haveOf(name)}
                value={answers.stock[line.item] ?? ''}
                inputMode="decimal"
                {...(weighed ? { unit: units.massUnit } : {})}
                onChange={(text) => set({ stock: { ...answers.stock, [line.item]: text } })}
              />
              <Field
                label={of.price}
                aria-label={of.priceOf(name)}
                value={answers.prices[line.item] ?? ''}
                inputMode="decimal"
                onChange={(text) => set({ prices: { ...answers.prices, [line.item]: text } })}
              />
              <span className="kit-cost num">{line.cost === null ? '' : line.cost.toFixed(2)}</span>
            </li>
          );
        })}
      </ul>
      {answer.pieces !== null && answer.pieces.mesh > 0 ? <p>{coreWords.kit.meshShort}</p> : null}
      {answer.unpriced.length === 0 ? null : (
        <p className="note">{coreWords.kit.unpriced(answer.unpriced.map((item) => coreWords.kit.items[item]).join(', '))}</p>
      )}
    </section>
  );
}

/** Solid: in the shed; hollow: still missing. The figures stand beside it. */
function Stock({ line }: { readonly line: KitLine }) {
  const there = Math.min(1, line.have / line.need) * 88;
  return (
    <svg width={90} height={12} aria-hidden="true" className="kit-bar">
      <rect x={1} y={1} width={88} height={10} className="kit-missing" />
      <rect x={1} y={1} width={there} height={10} className="kit-there" />
    </svg>
  );
}

function pieceText({ piece }: KitLine, units: UnitFormat): string {
  const sides = [piece.lengthM, piece.widthM, piece.thicknessM]
    .filter((side) => side !== null)
    .map((side) => lengthText(side, units, false));
  const material = piece.material === null ? '' : (words.hiveTop.layers[piece.material] ?? piece.material);
  return [material, sides.length === 0 ? '' : `${sides.join(' × ')} ${units.lengthUnit}`].filter((text) => text !== '').join(', ');
}
