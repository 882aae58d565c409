import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { FigureMark, Page } from '../../src/papers/page.ts'
import { layStageSheet } from '../../src/papers/stageSheet.ts'
import type { StageSheetOrder } from '../../src/papers/stageSheetOrder.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'
import { sampleOrder } from './sampleOrder.ts'

const { plan } = STEEL_STRING
const built = withField(plan, 'rim.sideThicknessMm', 2.41)
const planned = { numbers: compute(plan).numbers, taken: [{ field: 'rim.sideThicknessMm' as const }] }
const pagesOf = (key: string, more: Partial<StageSheetOrder>, done = false): readonly Page[] => {
  const order = sampleOrder(built, 'steelString', more)
  return layStageSheet({ ...order, stages: order.stages.flatMap((one) => (one.key === key ? [{ ...one, done }] : [])) })
}
const marksOf = (pages: readonly Page[]) => pages.flatMap(({ blocks }) => blocks.flatMap(({ marks }) => marks))
const signed = (pages: readonly Page[]): readonly string[] =>
  marksOf(pages)
    .filter((mark): mark is FigureMark => mark.kind === 'figure' && mark.figure.noted !== undefined)
    .map(({ figure }) => `${figure.whole} ${figure.noted ?? ''}`)
const hasLegend = (pages: readonly Page[]): boolean =>
  marksOf(pages).some((mark) => mark.kind === 'text' && mark.text.startsWith('† From your reading'))

describe('a target that follows a reading', () => {
  it('carries a sign, and the stage says what the sign means', () => {
    const pages = pagesOf('thicknessSides', { planned })
    expect(signed(pages)).toEqual(['2.41 †'])
    expect(hasLegend(pages)).toBe(true)
  })
  it('is plain once its stage is signed off, where nothing was measured, and where it reads as planned', () => {
    for (const pages of [
      pagesOf('thicknessSides', { planned }, true),
      pagesOf('thicknessSides', {}),
      pagesOf('thicknessSides', { planned: { ...planned, numbers: compute(built).numbers } }),
      // The thickness of the top does not follow that of the sides.
      pagesOf('thicknessTop', { planned }),
    ]) {
      expect(signed(pages)).toEqual([])
      expect(hasLegend(pages)).toBe(false)
    }
  })
  it('in a table of stations only what moved carries it', () => {
    const [along] = [pagesOf('profileBlanks', { planned })].map(signed)
    // Along the blank all but the tail move with the thickness; how wide it is sawn does not.
    expect(along!.length).toBeGreaterThan(20)
    expect(along).not.toContain('0.0 †')
  })
})
