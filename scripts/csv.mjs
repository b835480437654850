/** Rows of a comma-separated text with a header, RFC 4180 quotes; lines that begin with # are comments. Throws naming file and line. */
export function parseCsv(text, name) {
  const rows = [];
  let row = [''];
  let quoted = false;
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .filter((line, i) => !(line.startsWith('#') && !quoted && i >= 0));
  const body = lines.join('\n');
  for (let i = 0; i < body.length; i++) {
    const c = body[i];
    if (quoted) {
      if (c === '"' && body[i + 1] === '"') row[row.length - 1] += body[++i];
      else if (c === '"') quoted = false;
      else row[row.length - 1] += c;
    } else if (c === '"') quoted = true;
    else if (c === ',') row.push('');
    else if (c === '\n') {
      rows.push(row);
      row = [''];
    } else row[row.length - 1] += c;
  }
  if (row.length > 1 || row[0] !== '') rows.push(row);
  const full = rows.filter((r) => r.length > 1 || r[0] !== '');
  const [head, ...rest] = full;
  return rest.map((cells, i) => {
    if (cells.length !== head.length)
      throw new Error(`${name}: row ${i + 2} has ${cells.length} cells, the header ${head.length}: ${cells[0]}`);
    return Object.fromEntries(head.map((key, k) => [key, cells[k]]));
  });
}
