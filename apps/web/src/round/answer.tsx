import type { ColonyOutlook } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { StateShape } from '../ui/states.tsx';
import { figuresOf } from '../verdict/figures.ts';
import type { Advice } from '../weighing/advice.ts';
import type { Basis } from '../weighing/basis.ts';
import { errorFigure, figure } from '../weighing/figures.ts';
import { adviceSentence, headlineOf } from '../weighing/told.ts';

/** A sentence with its figures in the face made for figures. */
export function Figures({ text }: { readonly text: string }) {
  const pieces = text.split(/(\d[\d.,]*\d|\d)/);
  return pieces.map((piece, i) =>
    i % 2 === 1 ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one sentence have no other name
      <b key={i} className="num">
        {piece}
      </b>
    ) : (
      piece
    ),
  );
}

interface AnswerProps {
  readonly line: ColonyOutlook;
  readonly advice: Advice | null;
  readonly basis: Basis;
  readonly units: UnitFormat;
  readonly certaintyFrac: number;
  /** Nothing is typed: the answer is that of what was recorded. */
  readonly recorded: boolean;
}

/** What the hive holds and needs, where to stop, and what to do now that needs no other hive. */
export function Answer({ line, advice, basis, units, certaintyFrac, recorded }: AnswerProps) {
  const { round } = words;
  const headline = headlineOf(line, units);
  const figures = figuresOf(line, units);
  const has = figures.has === null || line.hasSdKg === null ? null : round.has(figures.has, errorFigure(units, line.hasSdKg));
  const needs = round.needs(figures.need, figures.unit);
  const chance = round.certainty(certaintyFrac);
  const mark = has === null ? '' : recorded && line.weighedOn !== null ? round.recorded(dayMonth(line.weighedOn)) : round.basis[basis];
  return (
    <>
      <h1 className={headline.text.length > 15 ? 'round-verdict round-verdict-long' : 'round-verdict'}>
        <StateShape shape={headline.shape} size={34} />
        <span>
          <Figures text={headline.text} />
        </span>
      </h1>
      <p className="round-holds">
        {has === null ? null : (
          <span>
            <Figures text={has} />
          </span>
        )}
        {mark === '' ? null : <span className="round-basis">{mark}</span>}
        <span className="round-needs">
          <Figures text={needs} />
        </span>
        <span className="round-chance">{chance}</span>
      </p>
      {line.hasKg === null || line.hasSdKg === null ? null : (
        <NeedBar hasKg={line.hasKg} sdKg={line.hasSdKg} needKg={line.needKg} label={round.barLabel(has ?? '', needs, chance)} />
      )}
      {line.state === 'set aside' ? null : <StopAt line={line} basis={basis} units={units} />}
      {advice === null ? null : (
        <p className="round-now">
          <b>{round.now}</b> {adviceSentence(advice, units)}
        </p>
      )}
      {line.notes.map((note) =>
        note.code === 'record-refused' ? (
          <p key={coreWords.faultSentence(note.fault)} className="error">
            {round.notReckoned(coreWords.faultSentence(note.fault))}
          </p>
        ) : null,
      )}
    </>
  );
}

/** The reading at which the need is met, at the edge that is weighed. */
function StopAt({ line, basis, units }: Pick<AnswerProps, 'line' | 'basis' | 'units'>) {
  const { round } = words;
  const edge = basis === 'rear' ? 'rear' : 'front';
  const [kg, sdKg] = edge === 'rear' ? [line.targetRearKg, line.targetRearSdKg] : [line.targetFrontKg, line.targetFrontSdKg];
  if (kg === null || sdKg === null) return null;
  const say = basis === 'word' ? round.stopScale : (line.aboveNeedKg ?? 0) < 0 ? round.stopShort : round.stopAbove;
  return (
    <p className="round-stop">
      <Figures text={say(round[edge], figure(units, kg), errorFigure(units, sdKg), units.massUnit)} />
    </p>
  );
}

/** Steps of the error as hatch that thins out: two standard errors down and two up. */
const STEPS = [1, 2, 3, 4];

interface NeedBarProps {
  readonly hasKg: number;
  readonly sdKg: number;
  readonly needKg: number;
  readonly label: string;
}

/** What is there as a bar that thins out over its error; what is needed as a mark. */
function NeedBar({ hasKg, sdKg, needKg, label }: NeedBarProps) {
  const widest = 1.06 * Math.max(needKg, hasKg + 2 * sdKg, 0.1);
  const percent = (kg: number) => `${(100 * Math.min(widest, Math.max(0, kg))) / widest}%`;
  return (
    <div className="round-bar" role="img" aria-label={label}>
      <i className="round-bar-has" style={{ width: percent(hasKg - 2 * sdKg) }} />
      {STEPS.map((step) => {
        const from = Math.max(0, hasKg + (step - 3) * sdKg);
        const to = Math.max(from, hasKg + (step - 2) * sdKg);
        return (
          <i key={step} className={`round-bar-step round-bar-step-${step}`} style={{ left: percent(from), width: percent(to - from) }} />
        );
      })}
      {needKg > hasKg ? <i className="round-bar-gap" style={{ left: percent(hasKg), width: percent(needKg - hasKg) }} /> : null}
      <i className="round-bar-need" style={{ left: percent(needKg) }} />
    </div>
  );
}
