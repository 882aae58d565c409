// @vitest-environment jsdom
import SvgPath from 'svgpath'
import { describe, expect, test } from 'vitest'
import type { Point } from '../../src/core/geometry/point.ts'
import { circle, through } from '../../src/drawing/line.ts'
import type { Plot } from '../../src/drawing/plot.ts'
import { writePlotSvg } from '../../src/files/svg/writePlotSvg.ts'
import { pointsAlong } from '../drawing/svgArc.ts'
import { cutBody, distanceMm, oneBrace, OUTLINES, plotWith, strokeOf } from './plottedDrawings.ts'

const NAMES = {
  title: 'Body, whole outline',
  layerNames: { cut: 'Cut through', score: 'Score', mark: 'Read only', text: 'Lettering' },
} as const

/** Read by the parser of the browser's own document model, which refuses what is not well formed. */
function read(plot: Plot, names: Parameters<typeof writePlotSvg>[1] = NAMES): Element {
  const file = new DOMParser().parseFromString(writePlotSvg(plot, names), 'image/svg+xml')
  expect(file.querySelector('parsererror')).toBeNull()
  return file.documentElement
}
const pathsOf = (svg: Element, layer: string): string[] =>
  [...svg.querySelectorAll(`#${layer} path`)].map((path) => path.getAttribute('d') ?? '')
/** Points along a path: a general library reads its text, the tests' own tracer walks it. */
function trace(d: string, perStep = 64): Point[] {
  const steps: string[] = []
  SvgPath(d)
    .abs()
    .iterate(([letter, ...figures]) => {
      steps.push(`${letter}${figures.join(' ')}`)
    })
  const [x, y] = steps[0]!.slice(1).split(' ').map(Number)
  return [{ x: x!, y: y! }, ...pointsAlong(steps.join(''), perStep)]
}

test('a unit is a millimetre: width and height in mm are those of the view box', () => {
  const svg = read(plotWith([strokeOf(circle({ x: 0, y: 0 }, 10))]))
  expect(svg.getAttribute('viewBox')).toBe('-20 -30 200 100')
  expect([svg.getAttribute('width'), svg.getAttribute('height')]).toEqual(['200mm', '100mm'])
  for (const plot of [cutBody('right'), ...OUTLINES.map((outline) => outline.plot)]) {
    const whole = read(plot)
    const [minX, minY, width, height] = whole.getAttribute('viewBox')!.split(' ').map(Number)
    expect(whole.getAttribute('width')).toBe(`${width}mm`)
    expect(whole.getAttribute('height')).toBe(`${height}mm`)
    expect(minX! + width!).toBeCloseTo(plot.box.maxX, 3)
    expect(minY! + height!).toBeCloseTo(plot.box.maxY, 3)
  }
})

test('a line of 100 mm is 100 mm long', () => {
  const [d] = pathsOf(
    read(
      plotWith([
        strokeOf(
          through([
            { x: -3.7, y: 12.1 },
            { x: 56.3, y: 92.1 },
          ]),
        ),
      ]),
    ),
    'cut',
  )
  const line = trace(d!, 1)
  expect(Math.hypot(line[1]!.x - line[0]!.x, line[1]!.y - line[0]!.y)).toBeCloseTo(100, 3)
})

test('layers by purpose, each named for machine and maker, in the order they are drawn', () => {
  const svg = read(cutBody('right'))
  const groups = [...svg.children].filter(({ tagName }) => tagName === 'g')
  expect(groups.map(({ id }) => id)).toEqual(['cut', 'score', 'mark', 'text'])
  expect(groups.map((group) => group.querySelector('title')?.textContent)).toEqual(Object.values(NAMES.layerNames))
  expect(svg.querySelector('title')?.textContent).toBe(NAMES.title)
  expect(new Set(groups.map((group) => group.getAttribute('stroke') ?? group.getAttribute('fill'))).size).toBe(4)
  // A layer with nothing on it is left out.
  expect([...read(plotWith([strokeOf(circle({ x: 0, y: 0 }, 1))])).querySelectorAll('g')].map(({ id }) => id)).toEqual([
    'cut',
  ])
})

test('nothing but lines and text: no fill to engrave, no script, no address, nothing of another program', () => {
  const text = writePlotSvg(cutBody('right'), NAMES)
  expect(text).not.toMatch(/script|href|url\(|inkscape|fill="(?!none|#808080)/i)
  expect(text.match(/https?:[^"]*/g)).toEqual(['http://www.w3.org/2000/svg'])
  const svg = read(cutBody('right'))
  expect(new Set([...svg.querySelectorAll('*')].map(({ tagName }) => tagName))).toEqual(
    new Set(['g', 'title', 'path', 'text']),
  )
})

test('pens are in mm; dashes too, but for what is cut through', () => {
  const line = through([
    { x: 0, y: 0 },
    { x: 10, y: 0 },
  ])
  const svg = read(
    plotWith([
      strokeOf(line, { dashesMm: [4, 1] }),
      strokeOf(line, { layer: 'score', penMm: 0.13, dashesMm: [4, 1, 0.5, 1] }),
    ]),
  )
  const [cut, score] = [...svg.querySelectorAll('path')]
  expect(cut!.getAttribute('stroke-width')).toBe('0.35')
  expect(cut!.hasAttribute('stroke-dasharray')).toBe(false)
  expect(score!.getAttribute('stroke-width')).toBe('0.13')
  expect(score!.getAttribute('stroke-dasharray')).toBe('4 1 0.5 1')
})

test('text stands with its middle at its place, turned where it is, and its signs come through', () => {
  const text = '<b> & "R\u20094″" ½\u0007'
  const svg = read(
    plotWith(
      [],
      [
        { text, at: { x: 12, y: 34 }, sizeMm: 4, heightMm: 3, turnDeg: 0 },
        { text: 'waist', at: { x: -5, y: 8 }, sizeMm: 4, heightMm: 2.5, turnDeg: -90 },
      ],
    ),
    { ...NAMES, title: text },
  )
  const [level, turned] = [...svg.querySelectorAll('text')]
  expect(level!.textContent).toBe('<b> & "R\u20094″" ½')
  expect(svg.querySelector('title')!.textContent).toBe('<b> & "R\u20094″" ½')
  expect([level!.getAttribute('x'), level!.getAttribute('y'), level!.getAttribute('font-size')]).toEqual([
    '12',
    '35.5',
    '4',
  ])
  expect(turned!.getAttribute('transform')).toBe('rotate(-90 -5 8)')
  expect(svg.querySelector('#text')!.getAttribute('font-family')).toBe('Barlow, sans-serif')
  expect(svg.querySelector('#text')!.getAttribute('text-anchor')).toBe('middle')
})

describe.each(OUTLINES)('outline of $name', ({ plot, points }) => {
  test('every point within 0.02 mm of the curve of the core, and all of it there', () => {
    const drawn = pathsOf(read(plot), 'cut').map((d) => trace(d))
    const halves = [points.slice(0, points.length / 2), points.slice(points.length / 2)]
    const off = drawn.flat().map((point) => Math.min(...halves.map((line) => distanceMm(point, line))))
    expect(Math.max(...off)).toBeLessThan(0.02)
    const missing = points
      .filter((_, i) => i % 10 === 0)
      .map((point) => Math.min(...drawn.map((line) => distanceMm(point, line))))
    // Between its points the traced line is a chord: of a radius of 40 mm, less than this.
    expect(Math.max(...missing)).toBeLessThan(0.02)
  })
})

test('a treble cutaway lies below for the right hand and above for the left', () => {
  const reach = (hand: 'right' | 'left', sign: 1 | -1) =>
    Math.max(
      ...pathsOf(read(cutBody(hand)), 'cut')
        .flatMap((d) => trace(d))
        .filter(({ x, y }) => x > 470 && x < 490 && y * sign > 0)
        .map(({ y }) => Math.abs(y)),
    )
  expect(reach('right', 1)).toBeLessThan(reach('right', -1) - 20)
  expect(reach('left', -1)).toBeLessThan(reach('left', 1) - 20)
})

// From inside, a top lies on its face, so bass is below for the right hand; into the open back one looks as from the front.
test.each([
  ['top', 'right', 1],
  ['top', 'left', -1],
  ['back', 'right', -1],
  ['back', 'left', 1],
] as const)('a brace on the bass side of the %s, %s-handed, seen from inside', (plate, hand, side) => {
  const braces = pathsOf(read(oneBrace(plate, hand)), 'cut')
    .map((d) => trace(d, 4))
    .filter((line) => line.every(({ x }) => x > 60 && x < 200))
  expect(braces).toHaveLength(1)
  for (const { x, y } of braces[0]!) {
    expect(y * side).toBeGreaterThan(30)
    expect(x).toBeGreaterThan(90)
    expect(x).toBeLessThan(170)
  }
})
