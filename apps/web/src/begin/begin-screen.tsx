import './begin.css';
import { unitFormat } from '@winterheft/words';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { hasDemo } from '../app/demo.ts';
import { TroubleLine } from '../app/lines.tsx';
import { append, isDemo, report, switchDemo, useHolding } from '../app/session.ts';
import { useUnitsName } from '../app/use-units.ts';
import { coreWords, words } from '../app/words.ts';
import type { Town } from '../background/towns.ts';
import { setModes, unitsOf } from '../modes/modes.ts';
import { type Answers, answersOf, countOf, labelsOf, newAnswers, ruleOf } from '../setup/answers.ts';
import { BuildEditor } from '../setup/build-editor.tsx';
import { HookEditor, hookWords } from '../setup/hook-editor.tsx';
import { degrees, PlaceEditor } from '../setup/place-editor.tsx';
import { newName, recordsOf } from '../setup/records.ts';
import { RuleEditor, ruleWords } from '../setup/rule-editor.tsx';
import { WinterPicture } from '../setup/winter-picture.tsx';
import { Field } from '../ui/field.tsx';
import { WordMark } from '../ui/icons.tsx';
import { UnitsChoice } from '../ui/units-choice.tsx';
import { useDraft } from '../ui/use-draft.ts';
import { AnswerRow } from './answer-row.tsx';
import { CountEditor, LabelsEditor, labelFault, labelWords } from './hives-editor.tsx';

type Row = 'yard' | 'place' | 'hives' | 'build' | 'labels' | 'units' | 'hook' | 'rule';

/** From nothing to a yard that can be weighed: a town, a number, one key. Everything else has an answer that can be changed. */
export default function BeginScreen() {
  const { begin } = words;
  const fresh = newAnswers(begin.homeYard, useUnitsName());
  const [answers, setAnswers, clear] = useDraft<Answers>('begin', fresh, (stored) => answersOf(stored, fresh));
  const [open, setOpen] = useState<Row | null>(answers.place !== null && answers.count === '' ? 'hives' : null);
  const hasYard = (useHolding()?.yards.size ?? 0) > 0;
  const change = (part: Partial<Answers>) => setAnswers({ ...answers, ...part });
  const choosePlace = (place: Town) => {
    // Who types a Canadian town weighs in pounds and degrees Celsius, as a rule; the row says so and can be changed.
    const units = hasYard || place.country === '' ? answers.units : unitsOf(place.country);
    change({ place, units });
    setOpen(answers.count === '' ? 'hives' : null);
  };
  return (
    <main className="begin">
      <div className="begin-talk">
        <WordMark />
        <TroubleLine />
        <h1>{begin.title}</h1>
        <p className="begin-lead">{begin.lead}</p>
      </div>
      {answers.place === null ? null : (
        <div className="begin-winter">
          <h2>{begin.winterTitle}</h2>
          <WinterPicture place={answers.place} units={unitFormat(answers.units)} />
        </div>
      )}
      <div className="begin-answers">
        {answers.place === null ? (
          <PlaceEditor onChoose={choosePlace} focus />
        ) : (
          <Rows answers={answers} open={open} setOpen={setOpen} change={change} choosePlace={choosePlace} clear={clear} />
        )}
        <Doors hasYard={hasYard} />
        <p className="note begin-foot">{begin.radioOff}</p>
      </div>
    </main>
  );
}

interface RowsProps {
  readonly answers: Answers;
  readonly open: Row | null;
  readonly setOpen: (row: Row | null) => void;
  readonly change: (part: Partial<Answers>) => void;
  readonly choosePlace: (place: Town) => void;
  readonly clear: () => void;
}

function Rows({ answers, open, setOpen, change, choosePlace, clear }: RowsProps) {
  const [, navigate] = useLocation();
  const [refused, setRefused] = useState<string | null>(null);
  const { begin } = words;
  const units = unitFormat(answers.units);
  const count = countOf(answers.count);
  const { labels, fault } = count === null ? { labels: [], fault: null } : labelsOf(answers, count);
  const buildName = begin.buildNames[answers.build.stack];
  const rule = ruleWords(answers.rule, answers.units, units.massUnit);
  const row = (name: Row) => ({ open: open === name, onToggle: () => setOpen(open === name ? null : name) });
  const go = async () => {
    const settled = recordsOf(answers, newName);
    if (settled === null) {
      setRefused(begin.goMissing);
      setOpen(count === null ? 'hives' : fault !== null ? 'labels' : ruleOf(answers.rule, answers.units).fault !== null ? 'rule' : 'place');
      return;
    }
    const written = await append(settled.records);
    if (!written.ok) {
      setRefused(coreWords.faultSentence(written.error));
      return;
    }
    clear();
    navigate('/');
  };
  return (
    <>
      <ul className="answers">
        <AnswerRow label={begin.rowYard} value={answers.yardName || begin.homeYard} {...row('yard')}>
          <Field label={begin.yardName} value={answers.yardName} maxLength={40} onChange={(yardName) => change({ yardName })} autoFocus />
        </AnswerRow>
        <AnswerRow label={begin.rowPlace} value={placeWords(answers.place)} {...row('place')}>
          <PlaceEditor onChoose={choosePlace} focus />
        </AnswerRow>
        <AnswerRow
          label={begin.rowHives}
          value={String(count ?? '')}
          missing={count === null ? begin.howManyMissing : null}
          {...row('hives')}
        >
          <CountEditor count={answers.count} onChange={(next) => change({ count: next })} onDone={() => setOpen(null)} />
        </AnswerRow>
        <AnswerRow
          label={begin.rowBuild}
          value={begin.builtOf(buildName, answers.build.frames, begin.materials[answers.build.material])}
          {...row('build')}
        >
          <BuildEditor build={answers.build} onChange={(build) => change({ build })} />
          <p className="note">{begin.othersLater}</p>
        </AnswerRow>
        <AnswerRow
          label={begin.rowLabels}
          value={labelWords(labels, begin.labelWays[answers.labelWay])}
          missing={fault === null ? null : labelFault(fault, count ?? 0)}
          {...row('labels')}
        >
          <LabelsEditor answers={answers} count={count ?? 0} onChange={change} />
        </AnswerRow>
        <AnswerRow label={begin.rowUnits} value={begin.units[answers.units]} {...row('units')}>
          <UnitsChoice
            units={answers.units}
            onChange={(next) => {
              setModes({ units: next });
              change({ units: next });
            }}
          />
        </AnswerRow>
        <AnswerRow label={begin.rowHook} value={hookWords(answers.hooks)} {...row('hook')}>
          <HookEditor hooks={answers.hooks} lengthUnit={units.lengthUnit} onChange={(hooks) => change({ hooks })} />
        </AnswerRow>
        <AnswerRow label={begin.rowRule} value={rule ?? ''} missing={rule === null ? begin.goMissing : null} {...row('rule')}>
          <RuleEditor rule={answers.rule} units={answers.units} massUnit={units.massUnit} onChange={(next) => change({ rule: next })} />
        </AnswerRow>
      </ul>
      {refused === null ? null : (
        <p className="error" role="alert">
          {refused}
        </p>
      )}
      <button type="button" className="key key-solid key-big begin-go" onClick={() => void go().catch(report)}>
        {begin.go}
      </button>
    </>
  );
}

function placeWords(place: Town | null): string {
  if (place === null) return '';
  return place.name === '' ? degrees(place) : `${place.name}, ${place.latDeg.toFixed(1)}° N`;
}

function Doors({ hasYard }: { readonly hasYard: boolean }) {
  const { begin, shell } = words;
  return (
    <p className="begin-doors">
      <a className="link" href={hasYard ? '#/' : '#/keep'}>
        {hasYard ? shell.toStart : begin.openFile}
      </a>
      {hasDemo && !isDemo ? (
        <button type="button" className="link" onClick={() => switchDemo(true)}>
          {begin.walkDemo}
        </button>
      ) : null}
    </p>
  );
}
