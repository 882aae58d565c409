import react from '@vitejs/plugin-react'
import type { Plugin } from 'vite'
import { defineConfig } from 'vitest/config'
import { offlineWorker } from './src/command/offlineWorker.ts'
import { staticImports } from './src/command/staticImports.ts'

/** What the built pages may load, and from where: from their own folder only, and no script but from a file. */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

/** Written into the built page alone: the development server needs scripts of its own in the page. */
const contentSecurityPolicy = (): Plugin => ({
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
      injectTo: 'head-prepend',
    },
  ],
})

/** What computes the numbers comes as one script: the same words pack better together. What the list of instruments needs of it stays apart. */
const ofList = staticImports('src/app/main.tsx')
const ofEngine = [...staticImports('src/core/compute.ts')].filter((file) => !ofList.has(file))
const isOfEngine = (id: string): boolean => ofEngine.some((file) => id.endsWith(`/${file}`))

const DOM_TESTS = ['tests/ui/**/*.test.{ts,tsx}', 'tests/views/**/*.test.{ts,tsx}', 'tests/app/**/*.test.tsx']
const WALKS = 'tests/journeys/**'

export default defineConfig({
  // Relative, so that the folder works from any path of any host.
  base: './',
  plugins: [react(), contentSecurityPolicy(), offlineWorker()],
  build: {
    target: ['es2023', 'safari16.4', 'chrome111', 'firefox115'],
    // A font inside a style sheet as data would need a wider policy.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 640,
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'engine', test: isOfEngine }] } } },
  },
  // Split as the page's own scripts are: what only one paper needs comes with it.
  worker: { format: 'es' },
  server: { port: 5173 },
  test: {
    // The catalogue alone keeps one processor busy for minutes: the others go on beside it.
    maxWorkers: '100%',
    // Properties and the catalogue compute thousands of instruments each.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...DOM_TESTS, WALKS],
        },
      },
      {
        extends: true,
        test: { name: 'dom', environment: 'jsdom', include: DOM_TESTS, setupFiles: ['tests/domSetup.ts'] },
      },
    ],
  },
})
