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

/** What is fetched together comes as one script, since the same words pack better together: what shows the list of instruments, and what computes the numbers. */
const ofList = [...staticImports('src/app/main.tsx'), ...staticImports('src/views/ListView.tsx')]
const ofEngine = [...staticImports('src/core/compute.ts')].filter((file) => !ofList.includes(file))
const isAmong = (files: readonly string[]) => (id: string) => files.some((file) => id.endsWith(`/${file}`))
const GROUPS = [
  { name: 'list', test: isAmong(ofList.filter((file) => file !== 'src/app/main.tsx')) },
  { name: 'engine', test: isAmong(ofEngine) },
]

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
    rolldownOptions: { output: { codeSplitting: { groups: GROUPS } } },
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
