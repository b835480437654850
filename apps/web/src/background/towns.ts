/** A town of the offline list. */
export interface Town {
  readonly name: string;
  readonly country: string;
  /** State or province in letters where the list has it, else empty. */
  readonly region: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevM: number | null;
}

interface Listed extends Town {
  /** As typed without the accents, in small letters; and in the plain spelling (`Jyvaeskylae`, `Lodz`) where the list has another. */
  readonly spellings: readonly string[];
}

/** Small letters without accents, points and doubled spaces, so that `sault ste marie` finds its town. */
export function foldedName(name: string): string {
  return name
    .normalize('NFD')
    .replace(/[\u0300-\u036f.'’]/g, '')
    .replace(/[\s-]+/g, ' ')
    .trim()
    .toLowerCase();
}

/** The list as data/places/towns.txt holds it: a line `#CC` begins a country, then one town a line, larger towns first. */
export function readTowns(text: string): readonly Listed[] {
  const towns: Listed[] = [];
  let country = '';
  for (const line of text.split('\n')) {
    if (line === '' || line.startsWith('!')) continue;
    if (line.startsWith('#')) {
      country = line.slice(1);
      continue;
    }
    const [name = '', plain = '', region = '', lat, lon, elev] = line.split('\t');
    const elevM = elev === undefined || elev === '' ? null : Number(elev);
    towns.push({
      name,
      country,
      region,
      latDeg: Number(lat) / 100,
      lonDeg: Number(lon) / 100,
      elevM,
      spellings: plain === '' ? [foldedName(name)] : [foldedName(name), foldedName(plain)],
    });
  }
  return towns;
}

/**
 * Towns whose name begins with what was typed, whole names first, then by how likely the country is, then by the list's order (size).
 * A comma narrows: `florence, wi`.
 */
export function findTowns(
  towns: readonly Listed[],
  typed: string,
  { home, most = 6 }: { readonly home?: string | undefined; readonly most?: number },
): readonly Town[] {
  const [wanted = '', rest = ''] = typed.split(',').map(foldedName);
  if (wanted.length < 2) return [];
  const hits: { readonly town: Listed; readonly rank: number }[] = [];
  for (const town of towns) {
    if (!town.spellings.some((spelling) => spelling.startsWith(wanted))) continue;
    if (rest !== '' && !`${town.region} ${town.country}`.toLowerCase().includes(rest)) continue;
    hits.push({ town, rank: (town.spellings.includes(wanted) ? 0 : 2) + (town.country === home ? 0 : 1) });
  }
  hits.sort((a, b) => a.rank - b.rank);
  return hits.slice(0, most).map(({ town: { spellings: _spellings, ...town } }) => town);
}
