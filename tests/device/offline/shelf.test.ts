import { describe, expect, test } from 'vitest'
import { answerFrom, clearOthers, layBy, type Stock } from '../../../src/device/offline/shelf.ts'

/** The browser's store of answers, as much of it as is used: by address, without a thought for headers. */
function emptyStore() {
  const shelves = new Map<string, Map<string, Response>>()
  const open = async (name: string) => {
    const shelf = shelves.get(name) ?? new Map<string, Response>()
    shelves.set(name, shelf)
    return {
      keys: async () => [...shelf.keys()].map((url) => ({ url })),
      put: async (url: string, response: Response) => void shelf.set(url, response),
      match: async (url: string) => shelf.get(url)?.clone(),
    }
  }
  const store = { open, keys: async () => [...shelves.keys()], delete: async (name: string) => shelves.delete(name) }
  return { caches: store as unknown as CacheStorage, shelves }
}

const stockOf = (version: string, folder = 'https://shop.test/bench/'): Stock => ({
  folder,
  version,
  files: [
    ['', 'sha256-page'],
    ['assets/a.js', 'sha256-a'],
    ['icons/icon.svg', 'sha256-icon'],
  ],
})

/** A host that sends a file's own name as its text; what is asked of it is noted. */
function host(fails: (path: string) => boolean = () => false) {
  const asked: Request[] = []
  const fetchFile = async (request: Request): Promise<Response> => {
    asked.push(request)
    const { pathname } = new URL(request.url)
    return new Response(pathname, { status: fails(pathname) ? 404 : 200 })
  }
  return { fetchFile, asked, paths: () => asked.map(({ url }) => new URL(url).pathname).sort() }
}
const noNet = () => Promise.reject(new TypeError('no net'))
/** A page that is gone to: a request of that kind cannot be made by hand. */
const pageAt = (url: string) => ({ url, method: 'GET', mode: 'navigate' }) as Request

describe('what is laid by', () => {
  test('is every file, checked by its digest; only names that change with their content may come out of the browser’s own store', async () => {
    const { caches } = emptyStore()
    const { fetchFile, asked, paths } = host()
    await layBy(caches, fetchFile, stockOf('1'))
    expect(paths()).toEqual(['/bench/', '/bench/assets/a.js', '/bench/icons/icon.svg'])
    const ways = asked.map(({ url, integrity, cache }) => [new URL(url).pathname, [integrity, cache]])
    expect(Object.fromEntries(ways)).toEqual({
      '/bench/': ['sha256-page', 'no-cache'],
      '/bench/assets/a.js': ['sha256-a', 'default'],
      '/bench/icons/icon.svg': ['sha256-icon', 'no-cache'],
    })
  })

  test('fails where one file is missing, and goes on from there the next time', async () => {
    const { caches } = emptyStore()
    const without = host((path) => path.endsWith('a.js'))
    await expect(layBy(caches, without.fetchFile, stockOf('1'))).rejects.toThrow('assets/a.js was answered 404')
    const whole = host()
    await layBy(caches, whole.fetchFile, stockOf('1'))
    expect(whole.paths()).toEqual(['/bench/assets/a.js'])
  })
})

describe('what is asked for', () => {
  test('comes from the shelf of its own version, with and without a net', async () => {
    const { caches } = emptyStore()
    await layBy(caches, host().fetchFile, stockOf('1'))
    for (const url of [
      'https://shop.test/bench/',
      'https://shop.test/bench/index.html',
      'https://shop.test/bench/?a=1',
    ]) {
      const answer = await answerFrom(caches, noNet, stockOf('1'), pageAt(url))
      expect(await answer.text()).toBe('/bench/')
    }
    const script = new Request('https://shop.test/bench/assets/a.js')
    expect(await (await answerFrom(caches, noNet, stockOf('1'), script)).text()).toBe('/bench/assets/a.js')
    await expect(answerFrom(caches, noNet, stockOf('2'), script)).rejects.toThrow('no net')
  })

  test('comes from the net where it is no file of the build; a page without a net is the workbench', async () => {
    const { caches } = emptyStore()
    await layBy(caches, host().fetchFile, stockOf('1'))
    const { fetchFile, paths } = host()
    const other = 'https://shop.test/bench/other'
    expect(await (await answerFrom(caches, fetchFile, stockOf('1'), pageAt(other))).text()).toBe('/bench/other')
    expect(paths()).toEqual(['/bench/other'])
    expect(await (await answerFrom(caches, noNet, stockOf('1'), pageAt(other))).text()).toBe('/bench/')
    await expect(answerFrom(caches, noNet, stockOf('1'), new Request(other))).rejects.toThrow('no net')
  })
})

test('a version that takes over clears those before it, and nothing of another folder or another program', async () => {
  const { caches, shelves } = emptyStore()
  const { fetchFile } = host()
  await layBy(caches, fetchFile, stockOf('1'))
  await layBy(caches, fetchFile, stockOf('2'))
  await layBy(caches, fetchFile, stockOf('1', 'https://shop.test/bench/old/'))
  await caches.open('something else')
  await clearOthers(caches, stockOf('2'))
  expect([...shelves.keys()]).toEqual(['ribwright /bench/ 2', 'ribwright /bench/old/ 1', 'something else'])
})
