import { readFileSync } from 'node:fs';
import { demoJournal, expect, goTo, openEmpty, takeJournal, test, waitUntilKept, writeRecord } from './app.ts';

const lines = readFileSync(demoJournal, 'utf8').trim().split('\n');

test('a journal sent by the share sheet is told in four numbers before anything is added, once', async ({ page, site }) => {
  await openEmpty(page, site);
  await waitUntilKept(page);
  // What the phone does when the app is chosen in its share sheet: a form with the file, to the address the manifest names.
  const arrived = await page.evaluate(async (text) => {
    const manifest = await (await fetch('manifest.webmanifest')).json();
    const target = manifest.share_target;
    const form = new FormData();
    form.append(target.params.files[0].name, new File([text], 'winterheft-2026-09-18.txt', { type: 'text/plain' }));
    const answer = await fetch(new URL(target.action, document.baseURI), { method: target.method, body: form });
    return answer.ok;
  }, lines.join('\n'));
  expect(arrived).toBe(true);
  await goTo(page, '/keep');
  await expect(page.getByText('In winterheft-2026-09-18.txt')).toBeVisible();
  await expect(page.locator('main dd')).toHaveText([String(lines.length), '0', '0', '0']);
  await expect(page.getByText('0 records on this device.')).toBeVisible();
  await goTo(page, '/settings');
  await goTo(page, '/keep');
  await expect(page.locator('main dd')).toHaveCount(0);
});

test('the file goes to the share sheet whole, and counts as copied only where somebody saw it arrive', async ({ page, site }) => {
  await page.addInitScript(() => {
    const shared = { times: 0, text: '', refuse: true };
    Object.assign(window, { shared });
    Object.assign(navigator, {
      canShare: () => true,
      share: async ({ files }: { readonly files: readonly File[] }) => {
        shared.times++;
        if (shared.refuse) throw new DOMException('closed', 'AbortError');
        shared.text = await (files[0] as File).text();
      },
    });
  });
  await openEmpty(page, site);
  await takeJournal(page);
  await writeRecord(page);
  await goTo(page, '/keep');
  await page.getByRole('button', { name: 'Send the file' }).click();
  await expect.poll(() => page.evaluate('window.shared.times')).toBe(1);
  await expect(page.getByText('Nothing has been copied yet')).toBeVisible();
  await expect(page.getByText('was handed to')).toHaveCount(0);
  await page.evaluate('window.shared.refuse = false');
  await page.getByRole('button', { name: 'Send the file' }).click();
  await expect(page.getByText('was handed to the program you chose')).toBeVisible();
  await expect(page.getByText('Nothing has been copied yet')).toBeVisible();
  await page.getByRole('button', { name: 'The file is there' }).click();
  await expect(page.getByText(/^All of it was copied on/)).toBeVisible();
  const text = (await page.evaluate('window.shared.text')) as string;
  const sent = text.trim().split('\n');
  expect(sent).toHaveLength(lines.length + 1);
  expect(lines.filter((line) => !sent.includes(line))).toEqual([]);
});

for (const answer of [true, false]) {
  test(`the browser's ${answer ? 'promise' : 'refusal'} to keep the journal is shown, and is still known later`, async ({ page, site }) => {
    await page.addInitScript((granted) => {
      let asked = localStorage.getItem('asked') === 'yes';
      Object.assign(navigator.storage, {
        persisted: async () => asked && granted,
        persist: async () => {
          asked = true;
          localStorage.setItem('asked', 'yes');
          return granted;
        },
      });
    }, answer);
    await openEmpty(page, site, '/keep');
    await expect(page.getByText('The browser has not been asked yet')).toBeVisible();
    await page.getByRole('button', { name: 'Ask the browser' }).click();
    const says = answer ? 'Yes: the browser has promised' : 'No: the browser may clear the journal';
    await expect(page.getByText(says)).toBeVisible();
    await page.reload();
    await expect(page.getByText(says)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Ask the browser' })).toHaveCount(answer ? 0 : 1);
  });
}
