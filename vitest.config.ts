import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['packages/*/test/**/*.test.ts', 'apps/*/test/**/*.test.ts', 'scripts/test/**/*.test.mjs', 'worth/test/**/*.test.ts'],
    // the usual is one less than there are cores: on a machine of two that leaves one idle
    maxWorkers: Math.max(2, availableParallelism() - 1),
    testTimeout: 120_000,
    reporters: ['default'],
  },
});
