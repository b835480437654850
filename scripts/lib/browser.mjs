// Starts the browser for scripts that draw or measure; the browser tests start theirs through playwright.config.ts.
import { chromium } from '@playwright/test';
import { ensureBrowser } from '../ensure-browser.mjs';

/** Root may not use the sandbox; everybody else keeps it. */
export const sandboxArgs = process.getuid?.() === 0 ? ['--no-sandbox'] : [];

/** A headless browser, or the end of the program with a sentence where none is to be had. */
export async function launchBrowser(options = {}) {
  const executablePath = ensureBrowser();
  if (executablePath === null) process.exit(1);
  return chromium.launch({ executablePath, args: sandboxArgs, ...options });
}
