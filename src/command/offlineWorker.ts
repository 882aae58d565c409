import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build, type Plugin } from 'vite'

const SOURCE = fileURLToPath(new URL('../device/offline/offlineWorker.ts', import.meta.url))

/** The file that answers without a net. It is asked for by this name, and never laid by itself: the browser keeps it. */
export const OFFLINE_WORKER = 'offlineWorker.js'

/** Writes, at the foot of every build, what answers without a net, with the list of all files of the build in it. */
export function offlineWorker(): Plugin {
  let folder = ''
  let publicFolder = ''
  return {
    name: 'offline-worker',
    apply: 'build',
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir)
      publicFolder = config.publicDir
    },
    async writeBundle(_, bundle) {
      // The folder may hold files of an earlier build: they are not of this one.
      await writeOfflineWorker(folder, [...Object.keys(bundle), ...filesUnder(publicFolder)])
    },
  }
}

/** Every file under a folder, by its path from there. */
export const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )

/** Writes it into a built folder, for the files named by their paths from there. */
export async function writeOfflineWorker(folder: string, paths: readonly string[]): Promise<void> {
  const files = paths
    .filter((path) => path !== OFFLINE_WORKER)
    .sort()
    // Asked for as the folder itself: some hosts send another answer, that leads there, to the name of the page.
    .map((path) => [path === 'index.html' ? '' : path, digest(readFileSync(join(folder, path)))])
  const version = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16)
  await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: { BUILT: JSON.stringify({ version, files }) },
    build: {
      outDir: folder,
      emptyOutDir: false,
      target: 'es2022',
      // In one piece, as a plain script: not every browser takes a module here.
      rollupOptions: { input: SOURCE, output: { format: 'iife', entryFileNames: OFFLINE_WORKER } },
    },
  })
}

/** As browsers check a file they are sent. */
const digest = (bytes: Uint8Array): string => `sha256-${createHash('sha256').update(bytes).digest('base64')}`
