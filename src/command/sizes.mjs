import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { gzipSync } from 'node:zlib'
import { ROOT } from './setUp.mjs'

/** What a maker waits for over a slow line: JavaScript, gzipped, in thousands of bytes. */
export const MOST_KB_UNTIL_LIST = 180
export const MOST_KB_MORE_FOR_COMMISSION = 90

/**
 * The gzipped size of one file, as a server would send it.
 *
 * @param {Uint8Array | string} body
 */
export const gzipBytes = (body) => gzipSync(body, { level: 9 }).byteLength

/** Every script of the build with its size, the largest first: what there is, not what is fetched (the walks measure that). */
export function listScripts() {
  const folder = join(ROOT, 'dist', 'assets')
  return readdirSync(folder)
    .filter((name) => name.endsWith('.js'))
    .map((name) => ({ name, gzipBytes: gzipBytes(readFileSync(join(folder, name))) }))
    .sort((a, b) => b.gzipBytes - a.gzipBytes)
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href)
  for (const { name, gzipBytes: bytes } of listScripts())
    console.log(`${(bytes / 1000).toFixed(1).padStart(8)} kB  ${name}`)
