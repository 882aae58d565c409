import { describe, expect, test } from 'vitest'
import { bodySpanMm } from '../../../src/core/instrument/bodySpan.ts'
import { dishGap } from '../../../src/core/instrument/dishGap.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import { makeCurve } from '../../../src/core/geometry/curve.ts'
import { arc } from '../../../src/core/geometry/piece.ts'
import { STEEL_PIECES } from '../../generators/demoModel.ts'
import { readTable } from '../../tables/readTable.ts'
import { traceChain } from '../trace.ts'
import { expectWithin } from '../within.ts'

const rows = readTable('sagitta.csv').map((row) => ({
  radiusMm: row.number('R'),
  chordMm: row.number('chord'),
  sagittaMm: row.number('sagitta'),
}))

describe('a dome in a dish of another radius', () => {
  const pairs = rows.flatMap((wanted) =>
    rows.filter((dish) => dish.chordMm === wanted.chordMm && dish !== wanted).map((dish) => ({ wanted, dish })),
  )

  test.each(pairs)(
    '$wanted.radiusMm in $dish.radiusMm over $wanted.chordMm is the difference of the tabled sagittas',
    (pair) => {
      const { wanted, dish } = pair
      const { gapMm, opens } = dishGap(wanted.radiusMm, { radiusMm: dish.radiusMm, diameterMm: 600 }, wanted.chordMm)
      expectWithin(gapMm, Math.abs(wanted.sagittaMm - dish.sagittaMm), 2e-6)
      expect(opens).toBe(dish.radiusMm < wanted.radiusMm ? 'middle' : 'rim')
    },
  )

  test('the table has such pairs, and the exact triangles agree: 5 and 13 over one chord of 10', () => {
    expect(pairs.length).toBeGreaterThan(3)
    // Over a chord of 10 radius 13 rises 13 - 12 = 1, radius 5 rises 5.
    expect(dishGap(13, { radiusMm: 5, diameterMm: 10 }, 10)).toEqual({ gapMm: 4, opens: 'middle', isWideEnough: true })
  })

  test('its own radius closes; a dish narrower than the span says so', () => {
    expect(dishGap(4600, { radiusMm: 4600, diameterMm: 480 }, 500)).toEqual({
      gapMm: 0,
      opens: 'nowhere',
      isWideEnough: false,
    })
  })
})

describe('how wide a dish has to be', () => {
  test('for a round body: its diameter', () => {
    const half = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [arc(190, Math.PI)])
    expectWithin(bodySpanMm({ bass: half, treble: half, isMirrored: true }), 380, 1e-6)
  })

  test('for the steel-string: the smallest circle found by trying every middle', () => {
    const { half } = closeChain(STEEL_PIECES, 496)
    const points = traceChain(STEEL_PIECES, 0.5)
    const tried = Array.from({ length: 2001 }, (_, i) => 150 + i * 0.1).map((x) =>
      Math.max(...points.map((point) => Math.hypot(point.x - x, point.y))),
    )
    expectWithin(bodySpanMm({ bass: half, treble: half, isMirrored: true }), 2 * Math.min(...tried), 0.1)
  })
})
