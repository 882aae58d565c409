import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { cutList } from '../../../src/core/wood/cutList.ts'
import { cutPart, type PartDraft, volumeMm3 } from '../../../src/core/wood/part.ts'
import { groupStock, slicesFrom, totalsByWood } from '../../../src/core/wood/stock.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { anyPlan } from '../../generators/plans.ts'
import { real } from '../../generators/real.ts'

const part = (lengthMm: number, widthMm: number, thicknessMm: number, more: Partial<PartDraft> = {}) => {
  const size = { lengthMm, widthMm, thicknessMm }
  return cutPart({ key: 'tailBlock', finished: size, rough: size, ...more })
}

describe('slices', () => {
  test('as many as come off when they are sawn one by one', () => {
    fc.assert(
      fc.property(real(1, 120), real(0.5, 60), real(0, 4), (boardMm, sliceMm, kerfMm) => {
        let [leftMm, count] = [boardMm, 0]
        // A hair is left to rounding either way.
        const within = (mm: number) => Math.abs(mm) < 1e-6
        for (; leftMm > sliceMm; leftMm -= sliceMm + kerfMm) {
          if (within(leftMm - sliceMm)) return
          count += 1
        }
        if (within(leftMm - sliceMm)) return
        expect(slicesFrom(boardMm, sliceMm, kerfMm, false)).toBe(count)
        expect(slicesFrom(boardMm, sliceMm, kerfMm, true)).toBe(2 * Math.floor(count / 2))
      }),
    )
  })

  test('none of nothing', () => {
    expect(slicesFrom(0, 5, 1, false)).toBe(0)
    expect(slicesFrom(20, 0, 1, false)).toBe(0)
    expect(slicesFrom(20, Number.NaN, 1, false)).toBe(0)
  })
})

describe('board feet', () => {
  test('a foot by a foot by an inch is one, and 2.359737216 litres', () => {
    const [group] = groupStock([part(304.8, 304.8, 25.4)], 0)
    expect(group).toMatchObject({ quarters: 4, nominalMm: 25.4 })
    expect(group!.boardFeet).toBeCloseTo(1, 12)
    // 144 cubic inches of 16.387064 ml (NIST SP 811, B.8).
    expect(group!.litres).toBeCloseTo((144 * 16.387064) / 1000, 9)
  })

  test('8/4 by 6 in by 8 ft holds eight', () => {
    const [group] = groupStock([part(8 * 304.8, 6 * 25.4, 50.8)], 0)
    expect(group!.quarters).toBe(8)
    expect(group!.boardFeet).toBeCloseTo(8, 12)
  })
})

describe('groups', () => {
  test('a bookmatched pair is bought as one billet that gives both', () => {
    const [group] = groupStock([part(500, 200, 4, { key: 'topHalf', quantity: 2, isBookmatched: true })], 1)
    // 4 + 1 + 4 = 9: the next board is 2/4, 12.7 mm.
    expect(group).toMatchObject({ quarters: 2, rows: [{ slices: 2, places: 1 }] })
    expect(group!.boughtMm3).toBeCloseTo(501 * 201 * 12.7, 6)
    // A kerf along two edges of the whole billet, one between the slices, one over the upper slice.
    expect(group!.kerfMm3).toBeCloseTo((501 * 201 - 500 * 200) * 12.7 + 2 * 500 * 200, 6)
    expect(group!.spareMm3).toBeCloseTo(500 * 200 * (12.7 - 10), 6)
  })

  test('one wood, thick and thin: slices that fill the thick board come from it, one that wastes it has a board of its own', () => {
    const thick = part(100, 50, 24, { key: 'tailBlock' })
    const four = part(100, 50, 5, { key: 'neckBlock', quantity: 4 })
    const one = part(100, 50, 5, { key: 'neckBlock', quantity: 1 })
    expect(groupStock([thick, four], 1).map(({ quarters, rows }) => [quarters, rows.length])).toEqual([[4, 2]])
    expect(groupStock([thick, one], 1).map(({ quarters, rows }) => [quarters, rows.length])).toEqual([
      [4, 1],
      [1, 1],
    ])
  })

  test('over four inches boards go up by inches', () => {
    expect(groupStock([part(100, 100, 103)], 1)[0]!.quarters).toBe(20)
  })

  test('board feet of one wood are summed before they are rounded', () => {
    // A board foot is 2,359,737 cubic mm, by definition 144 cubic inches; without a kerf a piece takes its face times the board's thickness.
    const list = [part(100, 100, 6, { key: 'topBrace' }), part(100, 100, 12, { key: 'topBrace', row: 2 })]
    const groups = groupStock(list, 0)
    const [total, ...more] = totalsByWood(groups, () => 'spruce')
    expect([groups.length, more.length, total!.groups]).toEqual([2, 0, 2])
    expect(total!.boardFeet).toBeCloseTo((1e4 * (6.35 + 12.7)) / 2359737.216, 9)
    expect(totalsByWood(groups, ({ quarters }) => `${quarters}`).map(({ name }) => name)).toEqual(['2', '1'])
  })

  test('small fittings are each of a material of their own', () => {
    const list = [part(44, 9, 6, { key: 'nut' }), part(74, 9, 3, { key: 'saddle' })]
    expect(groupStock(list, 1).map(({ material }) => material)).toEqual(['nut', 'saddle'])
  })

  test('every part of an instrument stands in one group, of its wood', () => {
    const list = cutList(STEEL_STRING.plan, compute(STEEL_STRING.plan).numbers)
    const groups = groupStock(list, 1.2)
    const grouped = groups.flatMap(({ rows }) => rows.map(({ part: { id } }) => id))
    expect(grouped.toSorted()).toEqual(list.map(({ id }) => id).toSorted())
    for (const { role, rows } of groups) for (const row of rows) expect(row.part.role).toBe(role)
  })

  test('bought is rough, kerf and what is left over; no less than a piece at a time would take', () => {
    fc.assert(
      fc.property(anyPlan, real(0, 4), (plan, kerfMm) => {
        for (const group of groupStock(cutList(plan, compute(plan).numbers), kerfMm)) {
          const { boughtMm3, roughMm3, kerfMm3, spareMm3, finishedMm3, nominalMm, rows } = group
          expect(Math.abs(roughMm3 + kerfMm3 + spareMm3 - boughtMm3)).toBeLessThan(1e-6 * boughtMm3)
          expect(finishedMm3).toBeLessThanOrEqual(roughMm3)
          expect(roughMm3).toBeCloseTo(
            rows.reduce((sum, { part: one }) => sum + volumeMm3(one.rough) * one.quantity, 0),
            3,
          )
          for (const { part: one, slices, places } of rows) {
            const sawn = Math.min(slices, one.quantity)
            expect(sawn * one.rough.thicknessMm + (sawn - 1) * kerfMm).toBeLessThan(nominalMm + 1e-6)
            expect(slices * places).toBeGreaterThanOrEqual(one.quantity)
          }
        }
      }),
      { numRuns: 12 },
    )
  })
})
