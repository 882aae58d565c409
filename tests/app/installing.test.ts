import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const ROOT = new URL('../../', import.meta.url)
const read = (path: string) => readFileSync(new URL(path, ROOT), 'utf8')

interface Manifest {
  readonly id: string
  readonly start_url: string
  readonly scope: string
  readonly display: string
  readonly theme_color: string
  readonly background_color: string
  readonly icons: readonly { src: string; sizes: string; type: string; purpose: string }[]
}
const manifest: Manifest = JSON.parse(read('public/manifest.webmanifest'))
const html = read('index.html')
const tokens = read('src/ui/tokens.css')

/** Width and height of a picture: where the format has them (W3C, PNG, 11.2.2: the first chunk, big-endian). */
function pngSize(path: string): string {
  const bytes = readFileSync(new URL(path, ROOT))
  expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10])
  return `${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`
}

describe('installing', () => {
  test('the folder may lie under any path: nothing names a host or begins at its root', () => {
    expect([manifest.id, manifest.start_url, manifest.scope, manifest.display]).toEqual([
      './',
      './',
      './',
      'standalone',
    ])
    for (const { src } of manifest.icons) expect(src).toMatch(/^icons\//)
  })

  test.each(manifest.icons.filter(({ type }) => type === 'image/png'))('$src is $sizes', ({ src, sizes }) => {
    expect(pngSize(`public/${src}`)).toBe(sizes)
  })

  test('there are icons of both sizes for either purpose, and one for the home screen of a tablet that reads no manifest', () => {
    for (const purpose of ['any', 'maskable'])
      for (const sizes of ['192x192', '512x512'])
        expect(manifest.icons.some((one) => one.purpose === purpose && one.sizes === sizes)).toBe(true)
    const [, touch] = /rel="apple-touch-icon" href="\/([^"]+)"/.exec(html)!
    expect(pngSize(`public/${touch}`)).toBe('180x180')
  })

  test('what the device draws round the page has the colour of its paper, by day and by night', () => {
    const papers = [...tokens.matchAll(/--paper: (#\w{6});/g)].map(([, colour]) => colour)
    const themes = [...html.matchAll(/name="theme-color" data-light="(\w+)" [^>]*content="(#\w{6})"/g)]
    expect(themes.map(([, light, colour]) => [light, colour])).toEqual([
      ['light', papers[0]],
      ['dark', papers[1]],
    ])
    expect([manifest.theme_color, manifest.background_color]).toEqual([papers[0], papers[0]])
  })
})
