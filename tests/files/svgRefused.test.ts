import { describe, expect, test } from 'vitest'
import { readSvgOutline } from '../../src/files/svgOutline.ts'

const page = (inside: string, attributes = 'width="400mm" height="300mm" viewBox="0 0 400 300"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inside}</svg>`

const problemOf = (text: string) => {
  const result = readSvgOutline(text)
  return result.ok ? null : result.problem
}

test('a document type that only names SVG is passed over', () => {
  const named = '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">'
  expect(problemOf(`<?xml version="1.0"?>\n${named}\n${page('<path d="M0 0h9"/>')}`)).toBeNull()
  expect(problemOf(`<!DOCTYPE svg>${page('<path d="M0 0h9"/>')}`)).toBeNull()
  expect(problemOf(`${named}${page('<path d="M0 0h9"/><text>&defined;</text>')}`)).toBe('notXml')
})

describe('what is not read', () => {
  test('is counted; what draws nothing is passed over', () => {
    const result = readSvgOutline(
      page(
        '<defs><path id="a" d="M0 0h9"/></defs><script>alert(1)</script><style>*{}</style><text>words</text><use href="#a"/>' +
          '<g display="none"><path d="M0 0h1"/></g><image href="x.png"/><path id="kept" d="M0 0h5"/>',
      ),
    )
    if (!result.ok) expect.fail(result.problem)
    const { paths, leftOut } = result.value
    expect(paths.map(({ name }) => name)).toEqual(['kept'])
    expect(Object.fromEntries(leftOut.map(({ kind, count }) => [kind, count]))).toEqual({
      text: 1,
      reference: 1,
      hidden: 1,
      picture: 1,
    })
  })

  test.each([
    ['', 'notXml'],
    ['hello', 'notXml'],
    ['<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0h9"/>', 'notXml'],
    ['<svg><g></svg>', 'notXml'],
    ['<svg><path d="M0 0h9" d="M1 1h1"/></svg>', 'notXml'],
    ['<svg>&bomb;<path d="M0 0h9"/></svg>', 'notXml'],
    ['<!DOCTYPE svg [<!ENTITY bomb "b">]><svg><path d="M0 0h9"/></svg>', 'doctype'],
    ['<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "x" [<!ENTITY b "b">]><svg><path d="M0 0h9"/></svg>', 'doctype'],
    ['<!DOCTYPE svg SYSTEM "file:///etc/hosts"><svg><path d="M0 0h9"/></svg>', 'doctype'],
    ['<!DOCTYPE html><svg><path d="M0 0h9"/></svg>', 'doctype'],
    ['<html><path d="M0 0h9"/></html>', 'notSvg'],
    ['<svg xmlns="other"><path d="M0 0h9"/></svg>', 'notSvg'],
    [page(''), 'nothingDrawn'],
    [page('<script>M0 0h9</script>'), 'nothingDrawn'],
    [page('<path d="M0 0 L banana"/>'), 'badPath'],
    [page('<path d="M0 0 L NaN 3"/>'), 'badPath'],
    [page('<path d="L3 3"/>'), 'badPath'],
    [page('<path d="M0 0R3 3 4 4"/>'), 'badPath'],
    [page('<polygon points="1 2 3"/>'), 'badPath'],
    [page('<circle r="many"/>'), 'badPath'],
    [page('<rect width="50%" height="3"/>'), 'badPath'],
    [page('<path transform="turn(3)" d="M0 0h9"/>'), 'badTransform'],
    [page('<path transform="translate(1.5.5)" d="M0 0h9"/>'), 'badTransform'],
    [page('<path style="fill:none;transform:scale(2)" d="M0 0h9"/>'), 'badTransform'],
    [page('<path d="M0 0h1e9"/>'), 'outOfRange'],
    [page('<path d="M0 0h1e999"/>'), 'outOfRange'],
    [page('<path transform="scale(1e300)" d="M0 0h1e300"/>'), 'outOfRange'],
    [page('', 'width="1mm" viewBox="0 0 0 0"'), 'badPath'],
  ])('%j: %s', (text, problem) => {
    expect(problemOf(text)).toBe(problem)
  })

  test('neither size nor depth nor count can hold it up', () => {
    const begun = performance.now()
    expect(problemOf('<svg>'.padEnd(50_000_000, ' '))).toBe('tooLarge')
    expect(problemOf('<g>'.repeat(1_600_000))).toBe('notSvg')
    expect(problemOf(`<svg>${'<g>'.repeat(1_600_000)}`)).toBe('notXml')
    expect(problemOf(page(`<path d="M0 0L${'1 2 '.repeat(1_000_000)}"/>`))).toBe('tooMany')
    expect(problemOf(page('<path d="M0 0h9"/>'.repeat(100_000)))).toBe('tooMany')
    expect(problemOf(page(`<polyline points="${'1 2 '.repeat(1_000_000)}x"/>`))).toBe('badPath')
    expect(problemOf(page(`<path transform="${'scale(1)'.repeat(100_000)}" d="M0 0h9"/>`))).toBe('badTransform')
    expect(problemOf(page(`<path d="M0 0L${'1'.repeat(4_000_000)}"/>`))).toBe('badPath')
    expect(performance.now() - begun).toBeLessThan(20_000)
  })
})
