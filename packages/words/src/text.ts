const CONTROLS = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\u2028\u2029]+/gu;
const WIDE =
  /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1f64f}\u{1f680}-\u{1faff}\u{20000}-\u{3fffd}]/u;

/** One line of what somebody typed: control and direction characters gone, spaces joined. */
export function plainText(text: string): string {
  return text.replace(CONTROLS, ' ').replace(/\s+/g, ' ').trim();
}

/** Columns a text takes in a terminal: marks that combine take none, wide letters and pictures two. */
export function columnsOf(text: string): number {
  let columns = 0;
  for (const character of text) {
    if (/^\p{M}$/u.test(character)) continue;
    columns += WIDE.test(character) ? 2 : 1;
  }
  return columns;
}

/** The text in at most `columns` columns; what was cut off is shown by an ellipsis. */
export function shortened(text: string, columns: number): string {
  // A label of ten thousand letters is cut before it is measured.
  const plain = plainText(text.length > columns * 8 ? `${text.slice(0, columns * 8)}…` : text);
  if (columnsOf(plain) <= columns) return plain;
  let kept = '';
  let used = 0;
  for (const character of plain) {
    const wide = columnsOf(character);
    if (used + wide > columns - 1) break;
    kept += character;
    used += wide;
  }
  return `${kept.trimEnd()}…`;
}

/** `a, b and c`, at most `limit` of them named and the rest counted. */
export function listed(items: readonly string[], joiner: string, limit = 24): string {
  const shown = items.slice(0, limit);
  const rest = items.length - shown.length;
  if (rest > 0) return `${shown.join(', ')} ${joiner} ${rest} more`;
  if (shown.length < 2) return shown.join('');
  return `${shown.slice(0, -1).join(', ')} ${joiner} ${shown[shown.length - 1]}`;
}
