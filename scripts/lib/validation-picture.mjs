// The picture of docs/validation.md: each row's place inside its tolerance.
const ROW = 18;
const LEFT = 430;
const WIDE = 360;
const TOP = 54;
const COLOURS = { strong: '#1b4f72', medium: '#2e86c1', weak: '#85929e' };
const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** Ours between the ends of what is allowed: -1 and 1 are the ends, 0 the middle. */
function placeOf({ check, ours }) {
  const [low, high] = Array.isArray(check.expected) ? check.expected : [check.expected, check.expected];
  const [from, to] = [low - check.within, high + check.within];
  return to === from ? 0 : (2 * (ours - from)) / (to - from) - 1;
}

/** A dot a row; filled: not used to set a parameter. Beyond the frame it is drawn at the frame as an arrow. */
export function validationPicture(rows) {
  const height = TOP + rows.length * ROW + 46;
  const x = (place) => LEFT + (WIDE * (Math.max(-1.25, Math.min(1.25, place)) + 1.25)) / 2.5;
  const lines = rows.map((row, i) => {
    const y = TOP + i * ROW;
    const place = placeOf(row);
    const colour = row.agrees ? COLOURS[row.strength] : '#c0392b';
    const fill = row.check.usedForSetting === true ? '#ffffff' : colour;
    const label = row.check.name.length > 68 ? `${row.check.name.slice(0, 66)}…` : row.check.name;
    return `<text x="${LEFT - 12}" y="${y + 4}" text-anchor="end">${escaped(label)}</text><circle cx="${x(place).toFixed(1)}" cy="${y}" r="4.5" fill="${fill}" stroke="${colour}" stroke-width="1.5"/>`;
  });
  const rule = (place, dash) =>
    `<line x1="${x(place)}" x2="${x(place)}" y1="${TOP - 12}" y2="${height - 40}" stroke="#7f8c8d"${dash ? ' stroke-dasharray="3 3"' : ''}/>`;
  const foot = height - 16;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${LEFT + WIDE + 20} ${height}" width="${LEFT + WIDE + 20}" height="${height}" font-family="sans-serif" font-size="11" fill="#1c2833">
<title>Each published row: ours inside its tolerance</title>
<rect width="100%" height="100%" fill="#ffffff"/>
<text x="12" y="20" font-size="14">Ours inside the published range and its tolerance</text>
<text x="${x(-1)}" y="${TOP - 18}" text-anchor="middle">lowest allowed</text><text x="${x(1)}" y="${TOP - 18}" text-anchor="middle">highest allowed</text>
${rule(-1, false)}${rule(0, true)}${rule(1, false)}
${lines.join('\n')}
<text x="12" y="${foot}">filled: not used to set a parameter; open: used. Dark to pale: strong, medium, weak. Red: outside.</text>
</svg>
`;
}
