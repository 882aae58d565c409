import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { fileFor, makeStaticServer } from '../../src/command/staticServer.mjs'

const place = mkdtempSync(join(tmpdir(), 'ribwright-server-'))
const folder = join(place, 'dist')
const server = makeStaticServer(folder, '/bench/')
let origin = ''

beforeAll(async () => {
  mkdirSync(join(folder, 'assets'), { recursive: true })
  writeFileSync(join(place, 'secret.txt'), 'secret')
  writeFileSync(join(folder, 'index.html'), '<!doctype html>')
  writeFileSync(join(folder, 'assets', 'a b.js'), '1')
  writeFileSync(join(folder, 'offlineWorker.js'), '1')
  writeFileSync(join(folder, 'manifest.webmanifest'), '{}')
  symlinkSync(join(place, 'secret.txt'), join(folder, 'link.txt'))
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
})
afterAll(() => {
  server.close()
  rmSync(place, { recursive: true })
})

describe('the server of the built folder', () => {
  test.each([
    ['/bench/', 'text/html; charset=utf-8'],
    ['/bench/index.html?x#y', 'text/html; charset=utf-8'],
    ['/bench/assets/a%20b.js', 'text/javascript; charset=utf-8'],
    ['/bench/offlineWorker.js', 'text/javascript; charset=utf-8'],
    ['/bench/manifest.webmanifest', 'application/manifest+json'],
  ])('gives %s as %s', async (path, type) => {
    const response = await fetch(`${origin}${path}`)
    expect(response.status).toBe(200)
    expect(response.headers.get('content-type')).toBe(type)
  })

  test.each([
    '/bench/../secret.txt',
    '/bench/%2e%2e/secret.txt',
    '/bench/..%2fsecret.txt',
    '/bench/assets/..%5c..%5csecret.txt',
    '/bench//etc/passwd',
    '/bench/link.txt',
    '/bench/none.js',
    '/bench/assets/',
    '/bench/%',
    '/bench/%00',
    '/secret.txt',
    '/',
  ])('gives nothing for %s', async (path) => {
    expect(await fileFor(folder, '/bench/', path)).toBeNull()
  })

  test.each(['', 'index.html', 'offlineWorker.js', 'manifest.webmanifest'])(
    'has a browser ask anew for /%s, so that a new version is found',
    async (path) => {
      expect((await fetch(`${origin}/bench/${path}`)).headers.get('cache-control')).toBe('no-cache')
    },
  )

  test('answers 404 in plain text, and only reads', async () => {
    expect((await fetch(`${origin}/bench/none.js`)).status).toBe(404)
    expect((await fetch(`${origin}/bench/`, { method: 'POST' })).status).toBe(405)
    const head = await fetch(`${origin}/bench/`, { method: 'HEAD' })
    expect([head.status, await head.text()]).toEqual([200, ''])
  })
})
