import { defineConfig } from 'vitest/config'

/** Walks through the built pages in a real browser; `npm run build` first. One after another: they share two cores with the browser. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: ['tests/journeys/**/*.test.ts'],
    environment: 'node',
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
})
