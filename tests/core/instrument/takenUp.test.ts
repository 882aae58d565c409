import { describe, expect, test } from 'vitest'
import { curveAt } from '../../../src/core/geometry/curve.ts'
import { plane } from '../../../src/core/geometry/surface.ts'
import { measureBlock } from '../../../src/core/instrument/block.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import {
  allWood,
  woodOfBlock,
  woodOfBraces,
  woodOfLining,
  woodOfPatch,
  woodOfRing,
  woodOfSideBraces,
} from '../../../src/core/instrument/takenUp.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { expectWithin } from '../within.ts'

const { plan } = STEEL_STRING
const { half } = closeChain(plan.outline.pieces, plan.outline.lengthMm)
const SIDE = plan.rim.sideThicknessMm

describe('a block', () => {
  const [widthMm, thicknessMm] = [120, 22]
  const block = measureBlock(
    { widthMm, thicknessMm },
    { half, cut: null, end: 'tail', sideThicknessMm: SIDE, top: plane(0, 0), back: plane(-106, 0.03) },
  )

  test('on the round end of a body, against strips between the inner face and its own face', () => {
    // Dense points of the outer face, each moved inward square to its neighbours; strips of the block from there to its flat face.
    const at = (s: number) => curveAt(half, s).point
    const inner = Array.from({ length: 4000 }, (_, i) => {
      const [a, b] = [at(i * 0.025), at((i + 1) * 0.025)]
      const size = Math.hypot(b.x - a.x, b.y - a.y)
      return {
        x: (a.x + b.x) / 2 + (SIDE * (b.y - a.y)) / size,
        y: (a.y + b.y) / 2 - (SIDE * (b.x - a.x)) / size,
      }
    })
    let volume = 0
    inner.slice(1).forEach((place, i) => {
      const wide = Math.min(place.y, widthMm / 2) - Math.min(inner[i]!.y, widthMm / 2)
      const [from, to] = [place.x, SIDE + thicknessMm]
      volume += 2 * wide * (to - from) * (106 - (0.03 * (from + to)) / 2)
    })
    // An estimate: the face is taken for a parabola, the height for that in the middle.
    expectWithin(woodOfBlock(block).volumeMm3, volume, volume * 0.005)
    expect(block.contourRiseMm).toBeGreaterThan(1)
  })

  test('takes its section more for every mm of depth', () => {
    const deeper = measureBlock(
      { widthMm, thicknessMm },
      { half, cut: null, end: 'tail', sideThicknessMm: SIDE, top: plane(0, 0), back: plane(-116, 0.03) },
    )
    const { volumeMm3, perDepthMm2 } = woodOfBlock(block)
    expectWithin(woodOfBlock(deeper).volumeMm3, volumeMm3 + 10 * perDepthMm2, 1e-6)
  })
})

test('a ring is the outer disc less the inner one', () => {
  expectWithin(woodOfRing(53, 18, 2).volumeMm3, Math.PI * (71 ** 2 - 53 ** 2) * 2, 1e-6)
  expect(woodOfRing(53, 0, 2).volumeMm3).toBe(0)
})

test('a plate is a trapezium', () => {
  // 60 long, 200 wide at one end and 140 at the other: a rectangle and two triangles.
  expectWithin(woodOfPatch(60, [200, 140], 3).volumeMm3, (60 * 140 + (2 * (30 * 60)) / 2) * 3, 1e-9)
  expect(woodOfPatch(-5, [18, 18], 2).volumeMm3).toBe(0)
})

test('side braces are whole sticks, and grow with the depth', () => {
  expect(woodOfSideBraces([60, 70], 6, 4)).toEqual({ volumeMm3: 24 * 130, perDepthMm2: 48 })
  expect(woodOfSideBraces([], 6, 4)).toEqual({ volumeMm3: 0, perDepthMm2: 0 })
})

test('linings and braces take a part of their rectangle, kerfs the other way more than kerfs inside', () => {
  const share = (kind: 'kerfed' | 'reversedKerf' | 'solidBent' | 'singleBlocks') =>
    woodOfLining({ kind, widthMm: 6, heightMm: 15 }, 1000).volumeMm3 / (6 * 15 * 1000)
  // A full triangle has half, a full rectangle all of it; blocks with gaps between can have less than the triangle.
  for (const kind of ['kerfed', 'reversedKerf', 'solidBent'] as const) {
    expect(share(kind)).toBeGreaterThanOrEqual(0.5)
    expect(share(kind)).toBeLessThan(1)
  }
  expect(share('reversedKerf')).toBeGreaterThan(share('solidBent'))
  expect(share('solidBent')).toBeGreaterThan(share('kerfed'))
  expect(share('kerfed')).toBeGreaterThan(share('singleBlocks'))
  const stick = { lengthMm: 300, widthMm: 8, heightMm: 14 }
  const two = woodOfBraces([stick, stick]).volumeMm3
  expect(two).toBeGreaterThan(2 * 0.6 * 300 * 8 * 14)
  expect(two).toBeLessThan(2 * 0.9 * 300 * 8 * 14)
})

test('all together', () => {
  const one = { volumeMm3: 5, perDepthMm2: 2 }
  expect(allWood([one, one, { volumeMm3: 1, perDepthMm2: 0 }])).toEqual({ volumeMm3: 11, perDepthMm2: 4 })
  expect(allWood([])).toEqual({ volumeMm3: 0, perDepthMm2: 0 })
})
