import { gzipSync } from 'node:zlib';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { wordList } from './app/word-list/plugin.ts';

/** Nothing may be loaded from, or sent to, another origin. The development server needs inline scripts, so only the build carries it. */
const policy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "worker-src 'self' blob:",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

const contentSecurityPolicy: Plugin = {
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
      injectTo: 'head-prepend',
    },
  ],
};

const FIRST_VIEW_LIMIT_KB = 230;

/** School networks are slow: the build fails when the scripts that the first view waits for grow beyond the limit, gzipped. */
const firstViewSize: Plugin = {
  name: 'first-view-size',
  apply: 'build',
  generateBundle(_options, bundle) {
    const waiting = Object.values(bundle)
      .filter((part) => part.type === 'chunk' && part.isEntry)
      .map((part) => part.fileName);
    const needed = new Set(waiting);
    let bytes = 0;
    for (const name of needed) {
      const part = bundle[name];
      if (part?.type !== 'chunk') continue;
      bytes += gzipSync(part.code).length;
      for (const imported of part.imports) needed.add(imported);
    }
    const size = `${(bytes / 1000).toFixed(1)} kB of gzipped JavaScript for the first view (limit ${FIRST_VIEW_LIMIT_KB})`;
    if (bytes > FIRST_VIEW_LIMIT_KB * 1000) this.error(size);
    this.info(size);
  },
};

export default defineConfig({
  root: 'app',
  publicDir: '../public',
  cacheDir: '../node_modules/.vite',
  base: './',
  plugins: [react(), wordList, contentSecurityPolicy, firstViewSize],
  /** What is bundled asks to be named with what is given away; the fonts' licence lies in public/. */
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    /** Only browsers from before 2024 would fetch a little sooner by it. */
    modulePreload: { polyfill: false },
    /** What the first view waits for comes in one file: compressed together it is smaller. */
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first-view', tags: ['$initial'] }] } } },
    chunkSizeWarningLimit: 1000,
    license: { fileName: 'licences.md' },
  },
  worker: { format: 'es' },
  /** Games are kept by address, so the same port each time. One that is taken moves on to the next. */
  preview: { port: 4750 },
  test: {
    reporters: ['default', ['json', { outputFile: '../test-results/unit.json' }]],
    projects: [
      {
        test: {
          name: 'core',
          root: '.',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/app/**'],
          environment: 'node',
          // A busy machine is no failure: this only ends what hangs.
          testTimeout: 120_000,
        },
      },
      {
        plugins: [react(), wordList],
        test: {
          name: 'screen',
          root: '.',
          include: ['tests/app/**/*.test.{ts,tsx}'],
          environment: 'happy-dom',
          testTimeout: 120_000,
        },
      },
    ],
  },
});
