import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

/** Nothing may be loaded from, or sent to, another origin. The development server needs inline scripts, so only the build carries it. */
const policy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
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

export default defineConfig({
  root: 'app',
  publicDir: '../public',
  base: './',
  plugins: [react(), contentSecurityPolicy],
  build: { outDir: '../dist', emptyOutDir: true },
  worker: { format: 'es' },
  test: {
    projects: [
      {
        test: {
          name: 'core',
          root: '.',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/app/**'],
          environment: 'node',
        },
      },
      {
        plugins: [react()],
        test: {
          name: 'screen',
          root: '.',
          include: ['tests/app/**/*.test.{ts,tsx}'],
          environment: 'happy-dom',
        },
      },
    ],
  },
});
