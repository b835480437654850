import { defineConfig } from '@playwright/test';
import { ensureBrowser } from './scripts/ensure-browser.mjs';

const executablePath = ensureBrowser();
if (executablePath === null) process.exit(1);

/** A phone of middling size; a test that needs a desk sets its own viewport. */
export default defineConfig({
  testDir: 'e2e',
  outputDir: '.cache/e2e',
  globalSetup: './e2e/build.ts',
  workers: 2,
  fullyParallel: true,
  retries: 0,
  forbidOnly: true,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: [['list'], ['json', { outputFile: '.cache/e2e.json' }]],
  use: {
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    locale: 'en-CA',
    timezoneId: 'America/Winnipeg',
    reducedMotion: 'reduce',
    launchOptions: { executablePath, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] },
  },
});
