/**
 * The key a line is kept under: its record's id and a mark of its text. Two contents under one id (which the fold reports) get two keys;
 * the same line gets the same key in every tab and from every file.
 *
 * equation    53-bit mix of two 32-bit multiply-and-shift hashes over UTF-16 code units; no protection against forgery
 */
export function lineKey(id: string, text: string): string {
  let a = 0xdeadbeef;
  let b = 0x41c6ce57;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    a = Math.imul(a ^ unit, 2654435761);
    b = Math.imul(b ^ unit, 1597334677);
  }
  a = Math.imul(a ^ (a >>> 16), 2246822507) ^ Math.imul(b ^ (b >>> 13), 3266489909);
  b = Math.imul(b ^ (b >>> 16), 2246822507) ^ Math.imul(a ^ (a >>> 13), 3266489909);
  return `${id}.${(4294967296 * (2097151 & b) + (a >>> 0)).toString(36)}`;
}

/** Key of a line that could not be read. */
export const unreadKey = (text: string): string => lineKey('unread', text);
