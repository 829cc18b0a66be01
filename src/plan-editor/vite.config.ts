import { defineConfig } from 'vitest/config';

const service = process.env.SHOWSAFETY_SERVICE ?? 'http://127.0.0.1:5081';

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    outDir: '../ShowSafety.Web/wwwroot',
    emptyOutDir: true,
    // The content policy allows files of this origin only: nothing is inlined as a data address.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: {
    host: '127.0.0.1',
    proxy: { '/health': service, '/api': service },
  },
  test: { include: ['src/**/*.test.ts'] },
});
