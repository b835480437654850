import {
  expect,
  expectScreen,
  expectUncopied,
  openDemo,
  openEmpty,
  screens,
  takeJournal,
  test,
  waitUntilKept,
  writeRecord,
} from './app.ts';

const ALL_SCREENS_MS = 240_000;

// After one visit no signal is needed; a new version is offered and never forced.

test('after one visit the app starts cold on a deep link with the server dead', async ({ page, context, site }) => {
  await openEmpty(page, site);
  await takeJournal(page);
  await waitUntilKept(page);
  await page.close();
  await site.stop();
  const cold = await context.newPage();
  await cold.goto(`${site.address}#/keep`);
  await expectUncopied(cold, 0);
  await writeRecord(cold);
  await expectUncopied(cold, 1);
  await cold.reload();
  await expectUncopied(cold, 1);
});

test('every screen opens with the server dead after one visit that only saw the first', async ({ page, context, site }) => {
  test.setTimeout(ALL_SCREENS_MS);
  await openEmpty(page, site);
  await waitUntilKept(page);
  await page.close();
  await site.stop();
  const cold = await context.newPage();
  await openDemo(cold, site);
  for (const { name, path } of screens()) {
    await cold.goto(`${site.address}#${path}`);
    await cold.reload();
    await expectScreen(cold, name);
  }
});

test('a new version is offered, not forced; the journal and the old screens stay until it is taken', async ({ page, site }) => {
  await openEmpty(page, site);
  await takeJournal(page);
  await waitUntilKept(page);
  await writeRecord(page);
  await expectUncopied(page, 1);
  site.publish('second');
  await page.reload();
  const version = page.locator('meta[name=version]');
  await expect(page.getByText('A new version is ready.')).toBeVisible();
  await expect(version).toHaveCount(0);
  await page.getByRole('status').getByRole('button', { name: 'Later' }).click();
  await expect(page.getByText('A new version is ready.')).toHaveCount(0);
  await page.reload();
  await expect(version).toHaveCount(0);
  await page.getByRole('button', { name: 'Use it now' }).click();
  await expect(version).toHaveAttribute('content', 'second');
  await expectUncopied(page, 1);
});

test('a page left open over an update goes on, is told, and loses nothing', async ({ page, context, site }) => {
  test.setTimeout(ALL_SCREENS_MS);
  await openEmpty(page, site);
  await takeJournal(page);
  await waitUntilKept(page);
  site.publish('second');
  const other = await context.newPage();
  await openEmpty(other, site, '/settings');
  await other.getByRole('button', { name: 'Use it now' }).click();
  await expect(other.locator('meta[name=version]')).toHaveAttribute('content', 'second');
  await expect(page.getByText('Another window has taken the new version.')).toBeVisible();
  await writeRecord(page);
  await expectUncopied(page, 1);
  for (const { name, path } of screens()) {
    await page.goto(`${site.address}#${path}`);
    await expectScreen(page, name);
  }
  await expectUncopied(other, 1);
});

test('the built page holds no script and no style of its own, and every screen obeys the policy', async ({ page, site, faults }) => {
  test.setTimeout(ALL_SCREENS_MS);
  const html = site.file('index.html');
  expect(html).toMatch(/http-equiv="Content-Security-Policy"/);
  expect(html.replace(/<script type="module" crossorigin src="[^"]+"><\/script>/g, '')).not.toMatch(/<script|<style|\sstyle=|\son[a-z]+=/i);
  await openDemo(page, site);
  for (const { name, path } of screens()) {
    await page.goto(`${site.address}#${path}`);
    await expectScreen(page, name);
    await page.waitForLoadState('networkidle');
  }
  expect(faults).toEqual([]);
});

test('what is asked for goes to the own server and nowhere else', async ({ page, site }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await openDemo(page, site);
  for (const { path } of screens()) await page.goto(`${site.address}#${path}`);
  expect(asked.length).toBeGreaterThan(5);
  expect(asked.filter((url) => !url.startsWith(site.address) && !/^(data|blob):/.test(url))).toEqual([]);
});
