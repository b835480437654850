import { compileCharacter, compileOlderNormals, compilePlaces, compileSpread, compileSpreadByClass } from './climate-compilers.mjs';
import { compileDeadouts } from './deadouts-compiler.mjs';
import { compileMaterials, compileTops } from './hivetop-compilers.mjs';
import { compileLevels, compileTreatments } from './mites-compiler.mjs';
import { compileParts } from './parts-compiler.mjs';
import { compileBlooms, compileSizes, compileTasks } from './season-compilers.mjs';

// One compiler per data file that is not a list of parameters: rows in, module text out.
export const compilers = [
  { source: 'data/climate/places.csv', target: 'climate-places.gen.ts', compile: compilePlaces },
  { source: 'data/climate/spread.csv', target: 'climate-spread.gen.ts', compile: compileSpread },
  { source: 'data/climate/spread-by-class.csv', target: 'climate-spread-by-class.gen.ts', compile: compileSpreadByClass },
  { source: 'data/climate/character.csv', target: 'climate-character.gen.ts', compile: compileCharacter },
  { source: 'data/climate/older-normals.csv', target: 'climate-older-normals.gen.ts', compile: compileOlderNormals },
  { source: 'data/parts.csv', target: 'parts.gen.ts', compile: compileParts },
  { source: 'data/materials.csv', target: 'materials.gen.ts', compile: compileMaterials },
  { source: 'data/tops.csv', target: 'tops.gen.ts', compile: compileTops },
  { source: 'data/thresholds.csv', target: 'mite-levels.gen.ts', compile: compileLevels },
  { source: 'data/treatments.csv', target: 'mite-treatments.gen.ts', compile: compileTreatments },
  { source: 'data/blooms.csv', target: 'blooms.gen.ts', compile: compileBlooms },
  { source: 'data/tasks.csv', target: 'tasks.gen.ts', compile: compileTasks },
  { source: 'data/deadouts.csv', target: 'deadouts.gen.ts', compile: compileDeadouts },
  { source: 'data/sizes.csv', target: 'sizes.gen.ts', compile: compileSizes },
];
