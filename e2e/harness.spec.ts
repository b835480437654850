import { axeFindings, expect, goTo, openDemo, openEmpty, test, waitUntilKept } from './app.ts';

// The tools of these tests, tested: a check that cannot fail proves nothing.

test('a site that was stopped answers nothing, and answers again when it was started', async ({ site, request }) => {
  expect((await request.get(site.address)).status()).toBe(200);
  await site.stop();
  await expect(request.get(site.address)).rejects.toThrow(/ECONNREFUSED/);
  await site.start();
  expect((await request.get(site.address)).status()).toBe(200);
});

test('what the content policy refuses, what nobody caught and what is missing is noticed', async ({ page, site, faults }) => {
  await openEmpty(page, site);
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'window.ran = true';
    document.head.append(script);
    setTimeout(() => Promise.reject(new Error('on purpose')));
    void fetch('none.txt').catch(() => undefined);
  });
  await expect.poll(() => faults.join('\n')).toMatch(/Content Security Policy/);
  await expect.poll(() => faults.join('\n')).toMatch(/on purpose/);
  await expect.poll(() => faults.join('\n')).toMatch(/404/);
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  faults.length = 0;
});

test('axe finds a picture without words', async ({ page, site }) => {
  await openEmpty(page, site);
  await page.evaluate(() => document.querySelector('main')?.append(document.createElement('img')));
  expect((await axeFindings(page)).join('\n')).toMatch(/^image-alt: /m);
});

test('the demo holding opens with its 26 colonies, and goes to a route', async ({ page, site }) => {
  await openDemo(page, site);
  await goTo(page, '/keep');
  await waitUntilKept(page);
  await expect(page).toHaveURL(/#\/keep$/);
});

test('a killed browser process is gone, and its profile opens again', async ({ site, browserProcess }) => {
  const first = await browserProcess();
  const page = await first.context.newPage();
  await openEmpty(page, site);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('harness', 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore('a');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const writing = opening.result.transaction('a', 'readwrite', { durability: 'strict' });
          writing.objectStore('a').put('kept', 'key');
          writing.oncomplete = () => resolve();
        };
      }),
  );
  await first.kill();
  await expect(page.evaluate(() => 1)).rejects.toThrow();
  const second = await browserProcess();
  const again = await second.context.newPage();
  await openEmpty(again, site);
  const kept = await again.evaluate(
    () =>
      new Promise((resolve) => {
        const opening = indexedDB.open('harness', 1);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('a').objectStore('a').get('key');
          reading.onsuccess = () => resolve(reading.result);
        };
      }),
  );
  expect(kept).toBe('kept');
});
