// Part of the service worker: takes a journal file from the phone's share sheet, lays it down for the page and opens Keep.
const SHARED = 'winterheft-shared';

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'POST' || !url.pathname.endsWith('/take-shared')) return;
  event.respondWith(
    (async () => {
      const file = (await event.request.formData()).get('journal');
      if (file instanceof File) {
        const headers = { 'Content-Type': 'text/plain; charset=utf-8', 'X-Name': encodeURIComponent(file.name) };
        await (await caches.open(SHARED)).put('shared-journal', new Response(file, { headers }));
      }
      return Response.redirect(new URL('./#/keep', self.registration.scope).href, 303);
    })(),
  );
});
