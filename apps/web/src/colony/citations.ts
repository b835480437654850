/** Citation and place of a source, by its key. */
export type Citations = ReadonlyMap<string, { readonly citation: string; readonly where: string }>;

const files = import.meta.glob<string>('../../../../data/sources/*.csv', { query: '?raw', import: 'default' });
let loaded: Promise<Citations> | null = null;

/** The lists of sources, loaded once when somebody asks where a figure comes from. */
export function citations(): Promise<Citations> {
  loaded ??= Promise.all(Object.values(files).map((load) => load())).then((texts) => {
    const all = new Map<string, { readonly citation: string; readonly where: string }>();
    for (const text of texts)
      for (const [key, citation = '', where = ''] of rowsOf(text).slice(1)) if (key !== undefined) all.set(key, { citation, where });
    return all;
  });
  return loaded;
}

/** Rows of a comma-separated text; a field in quotes may hold commas, line ends and doubled quotes. */
export function rowsOf(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  let field = '';
  let quoted = false;
  const endRow = () => {
    row.push(field);
    if (row.some((value) => value !== '')) rows.push(row);
    row = [];
    field = '';
  };
  for (let i = 0; i < text.length; i++) {
    const letter = text[i] as string;
    if (quoted) {
      if (letter !== '"') field += letter;
      else if (text[i + 1] === '"') {
        field += '"';
        i++;
      } else quoted = false;
    } else if (letter === '"') quoted = true;
    else if (letter === ',') {
      row.push(field);
      field = '';
    } else if (letter === '\n') endRow();
    else if (letter !== '\r') field += letter;
  }
  endRow();
  return rows;
}
