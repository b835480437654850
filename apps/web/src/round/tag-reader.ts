import { useEffect, useState } from 'react';

/** The browser's own reader of codes, as far as it is used here. */
interface CodeReader {
  readonly detect: (from: HTMLVideoElement) => Promise<readonly { readonly rawValue: string }[]>;
}
interface CodeReaderClass {
  new (options: { readonly formats: readonly string[] }): CodeReader;
  getSupportedFormats(): Promise<readonly string[]>;
}

const FORMAT = 'qr_code';
const readerClass = (): CodeReaderClass | undefined => (globalThis as { BarcodeDetector?: CodeReaderClass }).BarcodeDetector;

/** Whether this browser can see and read a tag: it has a camera to ask for, and a reader of these codes. */
async function canScan(): Promise<boolean> {
  const reader = readerClass();
  if (reader === undefined || typeof navigator.mediaDevices?.getUserMedia !== 'function') return false;
  return (await reader.getSupportedFormats()).includes(FORMAT);
}

export function useCanScan(): boolean {
  const [can, setCan] = useState(false);
  useEffect(() => {
    canScan().then(setCan, () => setCan(false));
  }, []);
  return can;
}

/** Time between two looks at the picture [ms]: short under the hand, and the battery lasts. */
const LOOK_MS = 150;

export interface Camera {
  /** Null where the camera has no light of its own. */
  readonly torch: ((on: boolean) => Promise<void>) | null;
  readonly stop: () => void;
}

/** A camera's track as far as its light goes, which the types of the language do not know. */
interface LitTrack {
  readonly getCapabilities?: () => { readonly torch?: boolean };
  readonly applyConstraints: (constraints: { readonly advanced: readonly { readonly torch: boolean }[] }) => Promise<void>;
}

/**
 * Shows the rear camera in `video` and gives each code it sees to `onRead` until that says it has what it wants, or `stop` is called.
 *
 * Rejects where the camera is refused or there is none.
 */
export async function openCamera(video: HTMLVideoElement, onRead: (text: string) => boolean): Promise<Camera> {
  const Reader = readerClass();
  if (Reader === undefined) throw new DOMException('no reader of codes', 'NotSupportedError');
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' }, audio: false });
  const reader = new Reader({ formats: [FORMAT] });
  let timer: ReturnType<typeof setTimeout> | null = null;
  const stop = () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    for (const track of stream.getTracks()) track.stop();
  };
  const look = async () => {
    // Before the first picture there is nothing to look at, and the reader says so by failing.
    const codes = video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA ? [] : await reader.detect(video).catch(() => []);
    if (timer === null) return;
    if (codes.some(({ rawValue }) => onRead(rawValue))) stop();
    else timer = setTimeout(look, LOOK_MS);
  };
  video.srcObject = stream;
  await video.play().catch(() => undefined);
  timer = setTimeout(look, LOOK_MS);
  const track = stream.getVideoTracks()[0] as unknown as LitTrack | undefined;
  const hasTorch = track?.getCapabilities?.().torch === true;
  return { torch: hasTorch ? (on) => track.applyConstraints({ advanced: [{ torch: on }] }) : null, stop };
}
