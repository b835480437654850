// Keeps the arrows: a folder of the core imports only folders above it, through their index; shells never import each other.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const ORDER = [
  'result',
  'units',
  'tables',
  'chance',
  'matter',
  'journal',
  'holding',
  'weigh',
  'weather',
  'phenology',
  'hivetop',
  'stores',
  'winter',
  'provision',
  'mites',
  'learn',
  'watch',
  'season',
  'kit',
  'plan',
];
/** What the core may take from outside. */
const CORE_PACKAGES = ['jstat'];
/** Which of our packages each package beside the core may import. */
const PACKAGES = { words: ['@winterheft/core'], solver: ['@winterheft/core'] };
const OUR_OTHER_PACKAGES = Object.keys(PACKAGES).map((name) => `@winterheft/${name}`);
/** Modules of a screen folder that are made to be called from anywhere. */
const WEB_FACE = ['keep/hand-over.ts', 'keep/persistence.ts'];
const IMPORT = /^\s*(?:import|export)\b[^'"]*?from\s*['"]([^'"]+)['"]|^\s*import\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)/gm;

function modulesUnder(folder) {
  try {
    return readdirSync(folder, { recursive: true })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => join(folder, name));
  } catch (error) {
    if (error.code === 'ENOENT') return [];
    throw error;
  }
}

function importsOf(text) {
  const code = text.replace(/\/\*[\s\S]*?\*\//g, '');
  return [...code.matchAll(IMPORT)].map((match) => match[1] ?? match[2] ?? match[3]);
}

function faultOfCore(file, specifier, core) {
  const here = relative(core, file).split(sep);
  if (!specifier.startsWith('.'))
    return CORE_PACKAGES.includes(specifier.split('/')[0]) ? null : `may import from outside only ${CORE_PACKAGES.join(', ')}`;
  if (here.length === 1) return null;
  const there = relative(core, resolve(dirname(file), specifier)).split(sep);
  if (there[0] === '..') return 'leaves the core';
  if (there[0] === here[0]) return null;
  const [from, to] = [ORDER.indexOf(here[0]), ORDER.indexOf(there[0])];
  if (from < 0) return `stands in a folder that has no place in the order: ${here[0]}`;
  if (to < 0) return 'imports a folder that has no place in the order';
  if (to > from) return `${here[0]} may not import ${there[0]}, which stands below it`;
  if (there[0] !== 'tables' && there.slice(1).join('/') !== 'index.ts') return `imports past ${there[0]}/index.ts`;
  return null;
}

/** Folders of the app with a screen in them. The app's own folder has the frame and the list of places, which is none. */
function screenFolders(web) {
  const folders = modulesUnder(web)
    .filter((file) => file.endsWith('-screen.tsx'))
    .map((file) => relative(web, file).split(sep)[0]);
  return new Set(folders.filter((folder) => folder !== 'app'));
}

/** A screen stands alone: nothing takes from its folder but app/places.ts, which loads it, and no folder but the app's knows that list. */
function faultOfScreen(file, specifier, web, screens) {
  if (!specifier.startsWith('.')) return null;
  const from = relative(web, file).split(sep);
  const to = relative(web, resolve(dirname(file), specifier)).split(sep);
  if (from.length === 1 || to[0] === from[0] || to[0] === '..') return null;
  if (to.join('/') === 'app/places.ts') return 'screens are loaded by app/places.ts and never import it';
  if (from.join('/') === 'app/places.ts' || WEB_FACE.includes(to.join('/'))) return null;
  return screens.has(to[0])
    ? `nothing imports from a screen's folder (${to[0]}); what is shared stands in a folder without a screen`
    : null;
}

/** Every broken arrow as a line of text, and how many modules were looked at. */
export function brokenArrows(root = ROOT) {
  const broken = [];
  let modules = 0;
  const core = join(root, 'packages/core/src');
  for (const file of modulesUnder(core)) {
    modules++;
    const text = readFileSync(file, 'utf8');
    for (const specifier of importsOf(text)) {
      const fault = faultOfCore(file, specifier, core);
      if (fault !== null) broken.push(`${relative(root, file)}: '${specifier}': ${fault}`);
    }
    if (/\bMath\s*\.\s*random\b/.test(text)) broken.push(`${relative(root, file)}: Math.random: randomness comes in as an argument`);
  }
  for (const [name, allowed] of Object.entries(PACKAGES)) {
    for (const file of modulesUnder(join(root, 'packages', name, 'src'))) {
      modules++;
      for (const specifier of importsOf(readFileSync(file, 'utf8'))) {
        const out =
          specifier.startsWith('.') && relative(join(root, 'packages', name, 'src'), resolve(dirname(file), specifier)).startsWith('..');
        if (out || (specifier.startsWith('@winterheft/') && !allowed.includes(specifier)))
          broken.push(`${relative(root, file)}: '${specifier}': ${name} may import only ${allowed.join(', ')}`);
      }
    }
  }
  const web = join(root, 'apps/web/src');
  const screens = screenFolders(web);
  for (const shell of readdirSync(join(root, 'apps'))) {
    for (const file of modulesUnder(join(root, 'apps', shell, 'src'))) {
      modules++;
      for (const specifier of importsOf(readFileSync(file, 'utf8'))) {
        const target = specifier.startsWith('.') ? relative(root, resolve(dirname(file), specifier)).split(sep) : [];
        const isAsset = (target[0] === 'data' && specifier.includes('?')) || (target[0] === 'demo' && specifier.endsWith('.json'));
        const leaves = target.length > 0 && !isAsset && !(target[0] === 'apps' && target[1] === shell);
        const otherShell =
          (specifier.startsWith('@winterheft/') && !['@winterheft/core', ...OUR_OTHER_PACKAGES].includes(specifier)) ||
          /^winterheft(\/|$)/.test(specifier);
        const fault =
          leaves || otherShell
            ? 'a shell imports packages by name and no other shell'
            : shell === 'web'
              ? faultOfScreen(file, specifier, web, screens)
              : null;
        if (fault !== null) broken.push(`${relative(root, file)}: '${specifier}': ${fault}`);
      }
    }
  }
  return { broken, modules };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { broken, modules } = brokenArrows();
  for (const line of broken) console.error(line);
  if (modules === 0) console.error('no module was found: the arrows were not checked');
  else console.log(`${modules} modules, ${broken.length} broken arrows`);
  process.exitCode = broken.length > 0 || modules === 0 ? 1 : 0;
}
