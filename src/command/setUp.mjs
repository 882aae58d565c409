import { spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The project's own folder. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..')

/**
 * Brings in the packages when they are missing, or older than the lock file. Nothing is written to standard output; what npm has to say goes to
 * standard error, and only when it fails or `loud` is set. Throws a plain sentence when it cannot.
 *
 * @param {{ loud?: boolean }} [options]
 */
export function setUpPackages({ loud = false } = {}) {
  const lock = join(ROOT, 'package-lock.json')
  const installed = join(ROOT, 'node_modules', '.package-lock.json')
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return
  if (loud) process.stderr.write('Fetching the packages (npm ci): once, and after each change of the lock file ...\n')
  const { status, stderr } = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: ROOT,
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
    shell: process.platform === 'win32',
  })
  if (status === 0) return
  throw new Error(`The packages could not be fetched (npm ci): ${lastLine(stderr)}`)
}

/** @param {string | null} text */
const lastLine = (text) => (text ?? '').trim().split('\n').at(-1) || 'no reason was given.'

/**
 * Builds the static folder dist/. Quiet unless it fails.
 */
export function buildPages() {
  const vite = join(ROOT, 'node_modules', 'vite', 'bin', 'vite.js')
  const { status, stdout, stderr } = spawnSync(process.execPath, [vite, 'build', '--logLevel', 'warn'], {
    cwd: ROOT,
    encoding: 'utf8',
  })
  if (status === 0) return
  process.stderr.write(`${stdout}${stderr}`)
  throw new Error('The pages could not be built.')
}
