import type { PartCount } from '@winterheft/core';
import { words } from '../app/words.ts';
import { choiceOfParts } from '../setup/builds.ts';

/** `two deeps of 10`, or that it has parts of its own. */
export function buildWords(parts: readonly PartCount[] | undefined): string {
  const { begin } = words;
  if (parts === undefined) return begin.noBuild;
  const choice = choiceOfParts(parts);
  if (choice === null) return begin.otherBuild;
  return `${begin.buildNames[choice.stack]} × ${choice.frames}, ${begin.materials[choice.material]}`;
}

/** The name of a part as people say it; a key this version has no name for stands as it is. */
export function partName(part: string): string {
  const { yard } = words;
  const box = /^(deep|medium|shallow)-(\d+)-(wood|foam)$/.exec(part);
  if (box !== null) return yard.boxName(box[1] as string, box[2] as string, box[3] as string);
  const frame = /^(deep|medium|shallow)-frame-(\w+)$/.exec(part);
  if (frame !== null) return yard.frameName(frame[1] as string, frame[2] as string);
  return yard.partNames[part] ?? part.replaceAll('-', ' ');
}
