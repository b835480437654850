import { bad, good, type Result } from '@winterheft/core';
import type { Fault } from '@winterheft/words';

/** Text of the bytes, or the fault that they are none: empty, or not UTF-8, or with zero bytes as binary files have. */
export function textOf(bytes: Uint8Array, name: string): Result<string, Fault> {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return bad({ kind: 'not-text', name });
  }
  if (text.includes('\u0000')) return bad({ kind: 'not-text', name });
  if (text.trim() === '') return bad({ kind: 'empty', name });
  return good(text);
}

/** The value a JSON text stands for, or where it stops being JSON. */
export function jsonOf(text: string, name: string): Result<unknown, Fault> {
  try {
    return good(JSON.parse(text) as unknown);
  } catch {
    const at = firstFaultOf(text);
    const before = text.slice(0, at);
    const lineStart = before.lastIndexOf('\n') + 1;
    const near = text.slice(at, at + 20) || 'the end of the text';
    return bad({ kind: 'not-json', name, line: before.split('\n').length, column: at - lineStart + 1, near });
  }
}

/** One token after white space: a sign, a string, or a number or word. */
const TOKEN =
  /\s*(?:([{}[\],:])|("[^"\\\p{Cc}]*(?:\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})[^"\\\p{Cc}]*)*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.]))/uy;

/**
 * Offset of the first character that cannot continue a JSON text. The messages of engines differ and some name no place, so we look ourselves.
 * `wants` is what may come next: a value, a value or `]`, a key, a key or `}`, a colon, or a comma or closing bracket.
 */
function firstFaultOf(text: string): number {
  const open: string[] = [];
  let wants: 'value' | 'value]' | 'key' | 'key}' | 'colon' | 'next' = 'value';
  let at = 0;
  for (;;) {
    TOKEN.lastIndex = at;
    const match = TOKEN.exec(text);
    const here = at + (/^\s*/.exec(text.slice(at, at + 10_000))?.[0].length ?? 0);
    if (match === null) return here;
    const [, sign, quote, word] = match;
    const isValue = quote !== undefined || word !== undefined;
    if (wants === 'colon') {
      if (sign !== ':') return here;
      wants = 'value';
    } else if (wants === 'key' || wants === 'key}') {
      if (quote !== undefined) wants = 'colon';
      else if (wants === 'key}' && sign === '}') {
        open.pop();
        wants = 'next';
      } else return here;
    } else if (wants === 'next') {
      const top = open[open.length - 1];
      if (sign === ',' && top !== undefined) wants = top === '{' ? 'key' : 'value';
      else if (sign !== undefined && sign === (top === '{' ? '}' : ']') && top !== undefined) open.pop();
      else return here;
    } else if (isValue) wants = 'next';
    else if (sign === '{' || sign === '[') {
      open.push(sign);
      wants = sign === '{' ? 'key}' : 'value]';
    } else if (wants === 'value]' && sign === ']') {
      open.pop();
      wants = 'next';
    } else return here;
    at = TOKEN.lastIndex;
  }
}
