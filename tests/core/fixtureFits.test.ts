import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Fixtures } from '../../src/core/fixture.ts'
import { type FixtureFit, fixtureFits, fixturesUsed, type Wanted, WANTED } from '../../src/core/fixtureFits.ts'
import type { Plan } from '../../src/core/plan.ts'
import { DEMO_FIXTURES } from '../generators/demoFixtures.ts'
import { DEMO_MODELS, SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { traceChain } from './trace.ts'
import { expectWithin } from './within.ts'

const { plan } = STEEL_STRING
const fitsOf = (of: Plan, fixtures: Fixtures = DEMO_FIXTURES) => fixtureFits(compute(of), fixtures)
function found<One extends Wanted>(fits: readonly FixtureFit[], wanted: One) {
  const one = fits.find((fit) => fit.wanted === wanted)
  if (one === undefined) throw new Error(`nothing for ${wanted}`)
  return one as Extract<FixtureFit, { wanted: One }>
}
const names = (fits: readonly { readonly name: string }[]) => fits.map(({ name }) => name)

describe('what of the shop serves the steel-string', () => {
  const fits = fitsOf(plan)

  test('is answered for all it wants, in one order', () => {
    expect(fits.map(({ wanted }) => wanted)).toEqual(WANTED)
    expect(fixtureFits(compute(plan), DEMO_FIXTURES, ['topDish']).map(({ wanted }) => wanted)).toEqual(['topDish'])
  })

  test('the tail: the inner face traced as with a compass, every board laid on it by hand', () => {
    const { fits: boards, wantedRadiusMm } = found(fits, 'tailBlock')
    // The tail arc of 950 less the side: 947.8 within, as far out as that arc reaches (4.29 degrees: 71 mm; the block is 76 wide).
    const insideMm = 950 - plan.rim.sideThicknessMm
    expectWithin(wantedRadiusMm, insideMm, 1e-6)
    const halfMm = plan.blocks.tail.widthMm / 2
    const rise = (radiusMm: number) => radiusMm - Math.sqrt(radiusMm * radiusMm - halfMm * halfMm)
    expect(names(boards)).toEqual(['Long board', 'Middle board', 'Flat board', 'Short board'])
    expectWithin(boards[0]!.gapMm, rise(insideMm) - rise(1000), 1e-6)
    expect(boards[0]!.opens).toBe('ends')
    expectWithin(boards[1]!.gapMm, rise(600) - rise(insideMm), 1e-6)
    expect(boards[1]!.opens).toBe('middle')
    expectWithin(boards[2]!.gapMm, rise(insideMm), 1e-6)
  })

  test('the flat neck end takes the flat board', () => {
    const { fits: boards } = found(fits, 'neckBlock')
    expect(boards[0]!.name).toBe('Flat board')
  })

  test('the dishes: its own first, the one too narrow last, over the circle that goes round the body', () => {
    const { spanMm, fits: backs } = found(fits, 'backDish')
    const outline = traceChain(STEEL_STRING.plan.outline.pieces, 1)
    const reaches = outline.map(({ x, y }) => Math.hypot(x - 248, y))
    expect(spanMm).toBeGreaterThan(496)
    expect(spanMm).toBeLessThan(2 * Math.max(...reaches) + 0.1)
    expect(names(backs)).toEqual(['Back dish', 'Top dish', 'Small dish'])
    expect(backs.map((fit) => fit.isWideEnough)).toEqual([true, true, false])
    expectWithin(backs[0]!.gapMm, 0, 1e-12)
    const sagitta = (radiusMm: number) => radiusMm - Math.sqrt(radiusMm ** 2 - spanMm ** 2 / 4)
    expectWithin(backs[1]!.gapMm, sagitta(4600) - sagitta(8500), 1e-9)
    expect(found(fits, 'topDish').fits[0]).toMatchObject({ name: 'Top dish', gapMm: 0, opens: 'nowhere' })
  })

  test('its own mould and form hold it', () => {
    for (const wanted of ['mould', 'bendingForm'] as const) {
      const [best] = found(fits, wanted).fits
      expect(best?.holds).toBe(true)
      expectWithin(best?.gapMm, 0, 1e-6)
    }
  })

  test('a longer one does not go in its mould any more, by half of what it grew', () => {
    const pieces = plan.outline.pieces.map((piece, i) =>
      i === 3 && piece.kind === 'straight' ? { ...piece, lengthMm: (piece.lengthMm ?? 0) + 8 } : piece,
    )
    const long = { ...plan, outline: { ...plan.outline, pieces, lengthMm: null } }
    const [best] = found(fitsOf(long), 'mould').fits
    expect(best?.holds).toBe(false)
    expect(best?.gapMm).toBeLessThan(8)
    expect(best?.unslidMm).toBeGreaterThan(best?.gapMm ?? 0)
  })
})

test('a flat top, a flat back and one arched across want no dish; on a flat rim the dome is no wider than its cap', () => {
  const wants = (of: Plan) => fitsOf(of).map(({ wanted }) => wanted)
  expect(wants({ ...plan, top: { ...plan.top, form: 'flat' } })).not.toContain('topDish')
  expect(wants({ ...plan, back: { ...plan.back, form: 'flat' } })).not.toContain('backDish')
  expect(wants({ ...plan, back: { ...plan.back, form: 'across' } })).not.toContain('backDish')
  // 6000 with a rise of 1: a cap 2 sqrt(12000 - 1) across.
  expectWithin(found(fitsOf(SMALL.plan), 'topDish').spanMm, 2 * Math.sqrt(12000 - 1), 1e-9)
})

test('ties go by name, then by id, in whatever order they were written down', () => {
  const board = (name: string) => ({ kind: 'contourBoard', name, radiusMm: 800, order: 'm' }) as const
  const one = { c: board('Ash'), b: board('Beech'), a: board('Beech') }
  const turned = { a: one.a, b: one.b, c: one.c }
  for (const fixtures of [one, turned])
    expect(found(fitsOf(plan, fixtures), 'tailBlock').fits.map(({ id }) => id)).toEqual(['c', 'a', 'b'])
})

test('the best for each thing wanted is what an instrument uses; a bare shop gives nothing', () => {
  const used = fixturesUsed(fitsOf(plan))
  expect(new Set([...used].map((id) => DEMO_FIXTURES[id]?.name))).toEqual(
    new Set(['Back dish', 'Flat board', 'Long board', 'Meadow form', 'Meadow mould', 'Top dish']),
  )
  expect(fixturesUsed(fitsOf(plan, {})).size).toBe(0)
})

test.each(DEMO_MODELS)('$name has finite gaps against everything', (model) => {
  for (const fit of fitsOf(model.plan))
    for (const { gapMm } of fit.fits) expect(Number.isFinite(gapMm) && gapMm >= 0).toBe(true)
})
