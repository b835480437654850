import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { contentPolicy } from '../../scripts/lib/content-policy.mjs';

/** Only in the build, since the development server injects styles. */
const contentPolicyTag: Plugin = {
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: contentPolicy }, injectTo: 'head-prepend' },
  ],
};

/** Our own packages only declare: what a page or a worker does not use is left out, tables included. */
const treeshake = { moduleSideEffects: (id: string) => !/\/(packages\/(core|words|solver)|node_modules\/(jstat|zod))\//.test(id) };

/** What every screen needs, in one file: the service worker answers file by file. */
const FIRST =
  /\/node_modules\/(react|react-dom|scheduler|wouter|dexie|comlink|regexparam|use-sync-external-store)\/|\/packages\/words\/src\/(?!app-figures)|\/apps\/web\/src\/(app|store|modes)\//;

export default defineConfig({
  base: './',
  worker: { format: 'es', rollupOptions: { treeshake } },
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rollupOptions: { treeshake, output: { codeSplitting: { groups: [{ name: 'first', test: FIRST, minShareCount: 1 }] } } },
  },
  plugins: [
    react(),
    contentPolicyTag,
    VitePWA({
      strategies: 'generateSW',
      registerType: 'prompt',
      injectRegister: false,
      filename: 'sw.js',
      manifest: {
        id: './',
        name: 'Winterheft',
        short_name: 'Winterheft',
        description: 'What every colony holds before the winter, whether that lasts, and who gives what to whom.',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#F2F6F8',
        theme_color: '#F2F6F8',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
        share_target: {
          action: './take-shared',
          method: 'POST',
          enctype: 'multipart/form-data',
          params: {
            files: [{ name: 'journal', accept: ['application/jsonl', 'application/json', 'text/plain', '.jsonl', '.txt', '.json'] }],
          },
        },
      },
      includeAssets: [],
      workbox: {
        globPatterns: ['**/*.{html,js,css,wasm,woff2,txt,jsonl,json,svg,png}'],
        maximumFileSizeToCacheInBytes: 6 * 1024 * 1024,
        navigateFallback: 'index.html',
        clientsClaim: true,
        cleanupOutdatedCaches: true,
        importScripts: ['take-shared.js'],
        // The names of built files carry their hash: what is in the cache under the name is right.
        dontCacheBustURLsMatching: /^assets\//,
      },
    }),
  ],
});
