import { describe, expect, test } from 'vitest'
import { readDxfOutline } from '../../src/files/dxfOutline.ts'

const problemOf = (text: string) => {
  const result = readDxfOutline(text)
  return result.ok ? null : result.problem
}

/** A file by hand: groups of entities, each [code, value, code, value, ...]. */
const byHand = (...entities: (readonly (string | number)[])[]) =>
  ['0', 'SECTION', '2', 'ENTITIES', ...entities.flat(), '0', 'ENDSEC', '0', 'EOF', ''].join('\r\n')

describe('what cannot be read', () => {
  const points = (...xs: number[]) => xs.flatMap((x) => [10, x, 20, 0])
  test.each([
    ['', 'notDxf'],
    ['hello', 'notDxf'],
    ['{"a": 1}', 'notDxf'],
    ['0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n0', 'notDxf'],
    ['SKETCH Binary DXF\r\n\u001A\u0000', 'binaryDxf'],
    [byHand(), 'nothingDrawn'],
    [byHand([0, 'INSERT', 2, 'body']), 'onlyBlocks'],
    [byHand([0, 'SPLINE', 71, 3, 11, 0, 21, 0, 11, 5, 21, 5]), 'onlyFit'],
    [byHand([0, 'LINE', 10, 0, 20, 0]), 'badEntity'],
    [byHand([0, 'LINE', 10, 0, 20, 'NaN', 11, 5, 21, 5]), 'badEntity'],
    [byHand([0, 'CIRCLE', 10, 0, 20, 0, 40, -5]), 'badEntity'],
    [byHand([0, 'ARC', 10, 0, 20, 0, 40, 5]), 'badEntity'],
    [byHand([0, 'ELLIPSE', 10, 0, 20, 0, 11, 0, 21, 0, 40, 1]), 'badEntity'],
    [byHand([0, 'LWPOLYLINE', 90, 3]), 'badEntity'],
    [byHand([0, 'POLYLINE', 70, 1]), 'badEntity'],
    [byHand([0, 'SPLINE', 71, 3, ...points(0, 1, 2, 3), 40, 0, 40, 1]), 'badEntity'],
    [byHand([0, 'SPLINE', 71, 1, ...points(0, 1), 40, 0, 40, 0, 40, 1, 40, 0]), 'badEntity'],
    [byHand([0, 'SPLINE', 71, 1, ...points(0, 1), 40, 0, 40, 0, 40, 1, 40, 1, 41, 1, 41, -1]), 'badEntity'],
    [byHand([0, 'LINE', 10, 0, 20, 0, 11, 1e9, 21, 5]), 'outOfRange'],
  ])('%j: %s', (text, problem) => {
    expect(problemOf(text)).toBe(problem)
  })

  test('neither size nor count can hold it up', () => {
    const begun = performance.now()
    expect(problemOf('0\n'.padEnd(50_000_000, '0\n'))).toBe('tooLarge')
    const line = [0, 'LINE', 10, 0, 20, 0, 11, 5, 21, 0]
    expect(problemOf(byHand(...Array.from({ length: 60_000 }, () => line)))).toBe('tooMany')
    const many = Array.from({ length: 100_000 }, () => [10, 1, 20, 2]).flat()
    expect(problemOf(byHand([0, 'SPLINE', 71, 3, ...many]))).toBe('badEntity')
    expect(problemOf('0\nSECTION\n2\nENTITIES\n'.padEnd(4_999_999, '0\nPOLYLINE\n'))).toBe('notDxf')
    expect(performance.now() - begun).toBeLessThan(20_000)
  })
})
