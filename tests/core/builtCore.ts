import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'
import type { compute } from '../../src/core/compute.ts'

interface BuiltCore {
  readonly compute: typeof compute
}

/**
 * The sums as one built file, made anew at every call: for tests that work out thousands of instruments. Tests otherwise take each
 * function out of its module through a getter at every use, which costs more than the sums do.
 *
 * What a part remembers by a plan's identity it does not share with the core a test imports.
 */
export async function buildCore(): Promise<BuiltCore> {
  const folder = mkdtempSync(join(tmpdir(), 'ribwright-core-'))
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      publicDir: false,
      build: {
        ssr: fileURLToPath(new URL('../../src/core/compute.ts', import.meta.url)),
        outDir: folder,
        minify: false,
        rolldownOptions: { output: { entryFileNames: 'core.mjs' } },
      },
    })
    return (await import(/* @vite-ignore */ pathToFileURL(join(folder, 'core.mjs')).href)) as BuiltCore
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
