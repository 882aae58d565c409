import { createReadStream } from 'node:fs'
import { realpath, stat } from 'node:fs/promises'
import { createServer } from 'node:http'
import { extname, join, resolve, sep } from 'node:path'

const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
}

/**
 * A server of one folder and nothing outside it, under `under` ('/' or a path such as '/shop/bench/'). Only reads.
 *
 * @param {string} folder
 * @param {string} [under]
 * @returns {import('node:http').Server}
 */
export function makeStaticServer(folder, under = '/') {
  return createServer((request, response) => {
    answer(folder, under, request, response).catch(() => refuse(response, 500))
  })
}

/**
 * @param {string} folder
 * @param {string} under
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function answer(folder, under, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405)
  const file = await fileFor(folder, under, request.url ?? '/')
  if (file === null) return refuse(response, 404)
  const { size } = await stat(file)
  response.writeHead(200, {
    'Content-Type': TYPES[extname(file).toLowerCase()] ?? 'application/octet-stream',
    'Content-Length': size,
    'X-Content-Type-Options': 'nosniff',
    // Files under assets/ carry a hash of what is in them; all others are asked for anew.
    'Cache-Control': file.includes(`${sep}assets${sep}`) ? 'public, max-age=31536000, immutable' : 'no-cache',
  })
  if (request.method === 'HEAD') return response.end()
  createReadStream(file)
    .on('error', () => response.destroy())
    .pipe(response)
}

/**
 * The file an address names; null where it names none, or one that lies outside the folder.
 *
 * @param {string} folder
 * @param {string} under
 * @param {string} url
 * @returns {Promise<string | null>}
 */
export async function fileFor(folder, under, url) {
  let path
  try {
    path = decodeURIComponent(url.split(/[?#]/)[0])
  } catch {
    return null
  }
  if (!path.startsWith(under) || path.includes('\0') || path.includes('\\')) return null
  const root = await realpath(folder)
  const wanted = resolve(root, `.${sep}${path.slice(under.length)}`)
  if (!lies(wanted, root)) return null
  try {
    // Once more after links have been followed.
    const found = await realpath((await stat(wanted)).isDirectory() ? join(wanted, 'index.html') : wanted)
    return lies(found, root) && (await stat(found)).isFile() ? found : null
  } catch {
    return null
  }
}

/**
 * @param {string} path
 * @param {string} root
 */
const lies = (path, root) => path === root || path.startsWith(root + sep)

/**
 * @param {import('node:http').ServerResponse} response
 * @param {number} status
 */
function refuse(response, status) {
  if (response.headersSent) return response.destroy()
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' })
  response.end(status === 404 ? 'There is no such page here.\n' : 'That cannot be done here.\n')
}
