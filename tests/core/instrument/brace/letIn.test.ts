import { describe, expect, test } from 'vitest'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { traceChain } from '../../trace.ts'
import { withFields } from '../../everyForm.ts'
import { expectWithin } from '../../within.ts'
import { beyond, brace, codesOf, computed, here, rimAt } from './braceSamples.ts'
import { type Dot, longestWithin, movedInward } from './clip.ts'

const plan = withFields(STEEL_STRING.plan, {
  'bridge.plateMm': 0,
  'linings.top.widthMm': 6.5,
  'linings.back.widthMm': 9,
})
const chain = traceChain(plan.outline.pieces, 0.1)
const within = (byMm: number): Dot[] => {
  const half = movedInward(chain, plan.rim.sideThicknessMm + byMm)
  return [...half, ...half.toReversed().map(({ x, y }) => ({ x, y: -y }))]
}
const spanMm = (byMm: number, [x1, y1, x2, y2]: readonly [number, number, number, number]) => {
  const size = Math.hypot(x2 - x1, y2 - y1)
  const { startMm, endMm } = longestWithin(within(byMm), { x: x1, y: y1 }, { x: (x2 - x1) / size, y: (y2 - y1) / size })
  return { startMm, endMm, lengthMm: endMm - startMm }
}

describe('tips, against a general library of polygons on dots moved inward', () => {
  const lines = [
    ['across the lower bout', [137, -50, 137, 50]],
    ['a leg of an X', [280, -20, 240, 30]],
    ['aslant over the upper bout', [400, -60, 420, 70]],
  ] as const
  test.each(lines)('%s: from lining to lining, and what is let in', (_, line) => {
    const [x1, y1, x2, y2] = line
    for (const [plate, liningMm] of [
      ['top', 6.5],
      ['back', 9],
    ] as const) {
      const one = brace(beyond(x1, y1, { letInMm: 2.5 }), beyond(x2, y2, { letInMm: 4 }), { plate })
      const row = computed(plan, { a: one }).numbers.braces[0]!
      const [side, lining] = [spanMm(0, line), spanMm(liningMm, line)]
      expectWithin(row.finishedLengthMm, lining.lengthMm + 2.5 + 4, 2e-3)
      expectWithin(row.fromShortMm, lining.startMm - side.startMm - 2.5, 2e-3)
      expectWithin(row.toShortMm, side.endMm - lining.endMm - 4, 2e-3)
      expectWithin(row.blankLengthMm, lining.lengthMm + 2.5 + 4 + 2 * plan.bracing.blankEndMm, 2e-3)
      // What it is arched over stays what it was.
      expectWithin(row.lengthMm, side.lengthMm, 1e-3)
    }
  })

  test('no tip stands beyond the side, however deep it is let in, and that is told with the lining’s width along the brace', () => {
    const line = lines[1][1]
    const ends = (letInMm: number) =>
      [beyond(line[0], line[1], { letInMm }), beyond(line[2], line[3], { letInMm: 0 })] as const
    const { numbers, findings } = computed(plan, { a: brace(...ends(15)) })
    const [side, lining] = [spanMm(0, line), spanMm(6.5, line)]
    expectWithin(numbers.braces[0]!.finishedLengthMm, lining.endMm - side.startMm, 2e-3)
    expect(numbers.braces[0]!.fromShortMm).toBe(0)
    const told = findings.find(({ code }) => code === 'braceLetInTooDeep')
    expect(told?.values).toMatchObject({ brace: 1, end: 0, letInMm: 15 })
    expectWithin(told?.values['liningMm'], lining.startMm - side.startMm, 2e-3)
    expect(told?.fields).toEqual(['bracing.braces', 'linings.top.widthMm'])
    // The lining is 6.5 square to the side, so along a slanting brace it is wider.
    expect(codesOf(plan, { a: brace(...ends(6.5)) })).toEqual([])
  })

  test('an end inside the plate has neither lining nor pocket', () => {
    const row = computed(plan, { a: brace(here(150, -40), here(150, 40)) }).numbers.braces[0]!
    expect([row.fromLetInMm, row.fromShortMm, row.toShortMm]).toEqual([0, 0, 0])
    expectWithin(row.finishedLengthMm, 80, 1e-9)
  })

  test('a brace that never leaves the lining has no length left', () => {
    const codes = codesOf(plan, { a: brace(here(6, 0), beyond(4.5, 0, { letInMm: 0 })) })
    expect(codes).toContain('braceHasNoLength')
  })
})

test('tapers begin at the tip: its end height stands there, and the ridge a taper further in', () => {
  const taper = { taper: 'straight', taperMm: 120, endHeightMm: 3 } as const
  const one = brace(rimAt('bass', 137, { letInMm: 0, ...taper }), rimAt('treble', 137))
  const { numbers } = computed(plan, { a: one })
  const row = numbers.braces[0]!
  for (const { alongMm, heightMm } of numbers.braceArch) {
    const fromTipMm = Math.max(alongMm - row.fromShortMm, 0)
    expectWithin(heightMm, Math.min(3 + (13 * fromTipMm) / 120, 16), 1e-9)
  }
  // Nearly square to the side there.
  expectWithin(row.fromShortMm, 6.5, 0.05)
})

describe('what is entered for an end and cannot be', () => {
  test('a height at the end over that of the brace', () => {
    const taper = { taper: 'scoop', taperMm: 40 } as const
    const ends = (endHeightMm: number) =>
      brace(here(150, -60, { ...taper, endHeightMm }), here(150, 60, { ...taper, endHeightMm: 2 }))
    expect(codesOf(plan, { a: ends(16) })).toEqual([])
    const told = computed(plan, { a: ends(40) }).findings.find(({ code }) => code === 'braceEndTooHigh')
    expect(told?.values).toEqual({ brace: 1, end: 0, endMm: 40, heightMm: 16 })
  })

  test('a distance from the tail that its side does not reach; of twins it is said once', () => {
    const at = (x: number) => brace(rimAt('bass', 150), rimAt('treble', x), { twin: true, lapped: true })
    expect(codesOf(plan, { a: at(200) })).toEqual([])
    const told = computed(plan, { a: at(700) }).findings.filter(({ code }) => code === 'braceEndBeyondBody')
    expect(told).toHaveLength(1)
    expect(told[0]?.values).toMatchObject({ brace: 1, end: 1, wantedMm: 700 })
    // The inner face at the neck stands the side's thickness inside the body.
    expectWithin(told[0]?.values['foundMm'], 496 - plan.rim.sideThicknessMm, 0.1)
  })
})
