/**
 * JSON text that depends on the value only: fields of objects in code unit order, no spaces, absent fields left out.
 * Two devices that write the same record write the same bytes.
 */
export function canonicalText(value: unknown): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  const body = value as Record<string, unknown>;
  let text = '';
  for (const key of Object.keys(body).sort()) {
    const inner = body[key];
    if (inner !== undefined) text += `${text === '' ? '' : ','}${JSON.stringify(key)}:${canonicalText(inner)}`;
  }
  return `{${text}}`;
}
