import { useEffect, useRef, useState } from 'react';
import { TroubleLine } from '../app/lines.tsx';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { feel, say } from '../modes/tell.ts';
import { Icon } from '../ui/icons.tsx';
import { tagRead } from '../weighing/tag.ts';
import type { WalkHive, WalkYard } from '../weighing/walk.ts';
import { type Camera, openCamera } from './tag-reader.ts';

interface ScannerProps {
  readonly walk: readonly WalkYard[];
  readonly here: WalkHive;
  /** What is typed at the hive of the round and could go along to the one whose tag is read; null where nothing is. */
  readonly movable: string | null;
  readonly onGo: (hive: string) => void;
  readonly onMove: (hive: string) => void;
  readonly onClose: () => void;
}

/** What the first tag was, where it leads nowhere by itself. */
type Found =
  | { readonly is: 'other-hive'; readonly hive: WalkHive }
  | { readonly is: 'other-yard'; readonly hive: WalkHive; readonly yard: string }
  | { readonly is: 'none' };

/** The tag on the hive instead of a look for its label: closes at the first one it reads. A tag of another yard is named and not followed. */
export function Scanner({ walk, here, movable, onGo, onMove, onClose }: ScannerProps) {
  const { scan } = words.round;
  const video = useRef<HTMLVideoElement>(null);
  const [camera, setCamera] = useState<Camera | null>(null);
  const [lit, setLit] = useState(false);
  const [found, setFound] = useState<Found | null>(null);
  const [refused, setRefused] = useState(false);
  const read = useRef((_text: string): boolean => false);
  read.current = (text) => {
    const hives = walk.flatMap((yard) => yard.hives);
    const hive = tagRead(text, hives);
    feel('tag');
    if (hive === null) setFound({ is: 'none' });
    else if (hive.yard !== here.yard) setFound({ is: 'other-yard', hive, yard: walk.find(({ yard }) => yard === hive.yard)?.name ?? '' });
    else {
      say(hive.label);
      if (hive.hive !== here.hive && here.stop === 'begun' && movable !== null) setFound({ is: 'other-hive', hive });
      else onGo(hive.hive);
    }
    return true;
  };
  useEffect(() => {
    if (found !== null || video.current === null) return;
    let isOver = false;
    let opened: Camera | null = null;
    openCamera(video.current, (text) => read.current(text)).then(
      (camera) => {
        opened = camera;
        if (isOver) camera.stop();
        else setCamera(camera);
      },
      () => setRefused(true),
    );
    return () => {
      isOver = true;
      opened?.stop();
      setCamera(null);
      setLit(false);
    };
  }, [found]);
  const light = () => {
    camera
      ?.torch?.(!lit)
      .then(() => setLit(!lit))
      .catch(report);
  };
  return (
    <main className="round-list round-scan">
      <TroubleLine />
      <h1>{scan.title}</h1>
      {refused ? (
        <p className="error" role="alert">
          {scan.refused}
        </p>
      ) : found === null ? (
        <>
          <video ref={video} className="round-scan-picture" aria-label={scan.picture} playsInline muted />
          <p>{scan.hint}</p>
        </>
      ) : (
        <p className="round-why" role="alert">
          {found.is === 'none'
            ? scan.notOurs
            : found.is === 'other-yard'
              ? scan.otherYard(found.hive.label, found.yard)
              : scan.otherHive(found.hive.label, movable ?? '', here.label)}
        </p>
      )}
      <div className="round-list-keys">
        {found?.is === 'other-hive' ? (
          <>
            <button type="button" className="round-back" onClick={() => onMove(found.hive.hive)}>
              {scan.move(found.hive.label)}
            </button>
            <button type="button" className="round-back" onClick={() => onGo(found.hive.hive)}>
              {scan.stay(here.label, found.hive.label)}
            </button>
          </>
        ) : null}
        {found === null ? null : (
          <button type="button" className="round-back" onClick={() => setFound(null)}>
            <Icon name="scan" /> {scan.again}
          </button>
        )}
        {camera?.torch ? (
          <button type="button" className="round-back" aria-pressed={lit} onClick={light}>
            <Icon name="sun" /> {scan.torch}
          </button>
        ) : null}
        <button type="button" className="round-back" onClick={onClose}>
          <Icon name="back" /> {words.round.backToHive(here.label)}
        </button>
      </div>
    </main>
  );
}
