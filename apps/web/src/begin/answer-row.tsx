import { type ReactNode, useId } from 'react';
import { words } from '../app/words.ts';

interface AnswerRowProps {
  readonly label: string;
  readonly value: string;
  /** Shown instead of the value while the answer is missing or wrong. */
  readonly missing?: string | null;
  readonly open: boolean;
  readonly onToggle: () => void;
  readonly children: ReactNode;
}

/** A settled answer with its editor below it: the whole row is the key. */
export function AnswerRow({ label, value, missing, open, onToggle, children }: AnswerRowProps) {
  const id = useId();
  return (
    <li className="answer">
      <button type="button" className="answer-row" aria-expanded={open} aria-controls={id} onClick={onToggle}>
        <span className="answer-label">{label}</span>
        <strong className={missing ? 'answer-value answer-missing' : 'answer-value'}>{missing || value}</strong>
        <span className="answer-change">{open ? words.begin.done : words.begin.change}</span>
      </button>
      <div id={id} className="answer-editor" hidden={!open}>
        {open ? children : null}
      </div>
    </li>
  );
}
