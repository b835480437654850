import type { ReactNode } from 'react';
import { words } from '../app/words.ts';
import { Icon } from '../ui/icons.tsx';
import type { BoxAtStop } from '../walk/box.ts';
import type { Balance } from '../walk/figures.ts';
import type { Names } from '../walk/naming.ts';
import type { WalkStop } from '../walk/walk.ts';
import { BoxPiece } from './box-picture.tsx';
import { combsLine, deedOf, placeOf } from './stop-words.ts';

interface StopRowProps {
  readonly at: WalkStop;
  readonly box: BoxAtStop | null;
  readonly names: Names;
  readonly balance: Balance | undefined;
  /** What a look came out as, or under what a look stands. */
  readonly says?: string | undefined;
  /** Said instead of the combs. */
  readonly line?: string | undefined;
  readonly isHere?: boolean;
  readonly isOpen?: boolean;
  readonly onToggle?: (() => void) | undefined;
  readonly onTick?: (() => void) | undefined;
  readonly onTakeBack?: (() => void) | undefined;
  readonly children?: ReactNode;
}

/** One stop of the walk: the box beside it, where, what, and the tick. The one that is due is open. */
export function StopRow({
  at,
  box,
  names,
  balance,
  says,
  line: said,
  isHere = false,
  isOpen = false,
  onToggle,
  onTick,
  onTakeBack,
  children,
}: StopRowProps) {
  const { provision } = words;
  const { stop, done, waits } = at;
  const place = placeOf(stop, names);
  const deed = says ?? deedOf(stop, names);
  const line = said ?? combsLine(stop, names);
  const text = (
    <>
      <b>{deed}</b>
      {line === '' ? null : <span className="stop-line">{line}</span>}
      {balance === undefined ? null : (
        <span className="stop-line">
          {provision.balance(names.figure(balance.beforeKg), names.figure(balance.afterKg), names.brief(balance.needKg))}
        </span>
      )}
      {waits === null || isHere ? null : (
        <span className="stop-line">{waits.kind === 'look' ? provision.waitsLook(names.colony(waits.colony)) : provision.waitsHand}</span>
      )}
    </>
  );
  const state = done !== null ? 'stop-done' : isHere ? 'stop-here' : 'stop-ahead';
  return (
    <li className={`stop ${state} stop-${stop.kind}`} aria-current={isHere ? 'step' : undefined}>
      {box === null ? null : <BoxPiece box={box} capped={at.box.capped} isHere={isHere} />}
      <div className="stop-body">
        <div className="stop-head">
          <b className={`num stop-place${stop.colony === null ? ' stop-shed-name' : ''}`}>{place}</b>
          {onToggle === undefined ? (
            <span className="stop-text">{text}</span>
          ) : (
            <button type="button" className="stop-text stop-toggle" aria-expanded={isOpen} onClick={onToggle}>
              {text}
            </button>
          )}
          {onTick === undefined ? null : (
            <button type="button" className="stop-tick" aria-label={provision.doneLabel(place, deed)} onClick={onTick}>
              <span className="stop-square" />
            </button>
          )}
          {onTakeBack === undefined ? null : (
            <button type="button" className="stop-tick" aria-label={provision.undoLabel(place, deed)} onClick={onTakeBack}>
              <Icon name="tick" size={24} />
            </button>
          )}
        </div>
        {isOpen ? <div className="stop-open">{children}</div> : null}
      </div>
    </li>
  );
}
