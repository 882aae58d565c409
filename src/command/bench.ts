import { readFileSync } from 'node:fs'
import { type Computed, compute } from '../core/compute.ts'
import type { OutlinePiece, Plan } from '../core/plan.ts'
import { bevelsDrawing } from '../drawing/bevelsDrawing.ts'
import { blankDrawing } from '../drawing/blankDrawing.ts'
import { blockDrawing } from '../drawing/blockDrawing.ts'
import { boxDrawingOf } from '../drawing/boxDrawingOf.ts'
import { domesDrawing } from '../drawing/domesDrawing.ts'
import { neckDrawingOf } from '../drawing/neckDrawingOf.ts'
import { planDrawing } from '../drawing/planDrawing.ts'
import { rosetteDrawing } from '../drawing/rosetteDrawing.ts'
import { sectionDrawing } from '../drawing/sectionDrawing.ts'
import { sideDrawing } from '../drawing/sideDrawing.ts'
import { planSchema } from '../record/planSchema.ts'
import { gzipBytes, listScripts } from './sizes.mjs'

/** One measured figure; `most` is what it should stay under, null where nothing was promised. */
export interface BenchFigure {
  readonly what: string
  readonly value: number
  readonly unit: string
  readonly most: number | null
}

const ROUNDS = 300

const readPlan = (model: string): Plan => {
  const file = new URL(`../../demo-data/models/${model}.json`, import.meta.url)
  return planSchema.parse((JSON.parse(readFileSync(file, 'utf8')) as { plan: unknown }).plan)
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0

/** Median time of one call, each with an argument of its own, after as many unmeasured ones as warm it up. */
function timeMs<Argument>(argument: (round: number) => Argument, call: (argument: Argument) => unknown): number {
  const times: number[] = []
  for (let round = 0; round < 2 * ROUNDS; round++) {
    const given = argument(round)
    const started = performance.now()
    call(given)
    if (round >= ROUNDS) times.push(performance.now() - started)
  }
  return median(times)
}

/** The sums and drawings of one instrument in Node, and the size of the scripts. */
export function measureSums(): BenchFigure[] {
  const [steel, small, nylon] = [readPlan('steelString'), readPlan('small'), readPlan('nylonString')]
  const deeper = (plan: Plan, round: number): Plan => ({
    ...plan,
    rim: { ...plan.rim, depthAtTailMm: plan.rim.depthAtTailMm + 0.01 * (round % 500) },
    back: { ...plan.back, radiusMm: plan.back.radiusMm + 2 * round },
  })
  const otherSetup = (round: number): Plan => ({
    ...steel,
    setup: { ...steel.setup, actionBassMm: 2.2 + 0.001 * (round % 400) },
    bridge: { ...steel.bridge, thicknessMm: 8.5 + 0.001 * (round % 700) },
  })
  const [braceId = '', brace] = Object.entries(steel.bracing.braces)[1] ?? []
  const otherBrace = (round: number): Plan =>
    brace === undefined
      ? steel
      : {
          ...steel,
          bracing: {
            ...steel.bracing,
            braces: {
              ...steel.bracing.braces,
              [braceId]: { ...brace, to: { ...brace.to, xMm: brace.to.xMm + 0.01 * (round % 400) } },
            },
          },
        }
  const estimated = (plan: Plan): Plan => ({ ...plan, bridge: { ...plan.bridge, compensation: 'estimated' } })
  const openChain = (round: number): Plan => {
    const pieces = steel.outline.pieces.map((piece, i): OutlinePiece => {
      if (piece.kind === 'straight') return piece
      if (i === 1) return { ...piece, radiusMm: 135 + 0.005 * (round % 400) }
      return [2, 4, 7].includes(i) ? { ...piece, sweepDeg: null } : piece
    })
    return { ...steel, outline: { ...steel.outline, pieces } }
  }
  const otherWidths = (round: number): Plan => ({
    ...nylon,
    outline: {
      ...nylon.outline,
      kind: 'keyWidths',
      keyWidths: {
        ...nylon.outline.keyWidths,
        waistMm: 230 + 0.01 * (round % 500),
        upperBoutMm: 276 + 0.01 * ((7 * round) % 500),
      },
    },
  })
  const otherReadings = (round: number): Plan => ({
    ...nylon,
    outline: {
      ...nylon.outline,
      halfWidths: {
        ...nylon.outline.halfWidths,
        rows: nylon.outline.halfWidths.rows.map(([x, y], i) => [x, i === 5 ? y + 0.001 * (round % 200) : y] as const),
      },
    },
  })
  const cut: Plan = { ...steel, outline: { ...steel.outline, cutaway: { ...steel.outline.cutaway, form: 'pointed' } } }
  const computed = Array.from({ length: 16 }, (_, i) => compute(deeper(steel, i)))
  const one = (round: number): Computed => computed[round % computed.length]!
  const sums: [string, number, number | null][] = [
    ['numbers, compass arcs', timeMs((round) => deeper(steel, round), compute), 4],
    ['numbers, action and bridge changed', timeMs(otherSetup, compute), 4],
    ['numbers, compensation estimated', timeMs((round) => estimated(otherSetup(round)), compute), 4],
    ['numbers, compass arcs, three values open', timeMs(openChain, compute), 4],
    ['numbers, small body', timeMs((round) => deeper(small, round), compute), 4],
    ['numbers, a brace moved', timeMs(otherBrace, compute), 4],
    ['numbers, key widths changed', timeMs(otherWidths, compute), 5],
    ['numbers, half-widths changed', timeMs(otherReadings, compute), 50],
    ['numbers, pointed cutaway', timeMs((round) => deeper(cut, round), compute), null],
    ['drawing: plan', timeMs(one, planDrawing), null],
    ['drawing: side', timeMs(one, (c) => sideDrawing(c)), null],
    ['drawing: blank', timeMs(one, (c) => blankDrawing(c, 'treble')), null],
    ['drawing: sections across', timeMs(one, (c) => domesDrawing(c)), null],
    ['drawing: long section', timeMs(one, (c) => sectionDrawing(c, steel.plates)), null],
    ['drawing: bevels', timeMs(one, bevelsDrawing), null],
    ['drawing: tail block', timeMs(one, (c) => blockDrawing(c, 'tail')), null],
    ['drawing: rosette', timeMs(one, rosetteDrawing), null],
    ['drawing: fingerboard', timeMs(one, (c) => neckDrawingOf('fretboard', c, steel)), null],
    ['drawing: braces of the top', timeMs(one, (c) => boxDrawingOf('bracingTop', c, steel)), null],
    ['drawing: neck set', timeMs(one, (c) => neckDrawingOf('neckSet', c, steel, 5)), null],
  ]
  const file = readFileSync(new URL('../../demo-data/commissions/26-07-meadow.json', import.meta.url))
  return [
    ...sums.map(([what, value, most]) => ({ what, value, unit: 'ms', most })),
    { what: 'one saved commission, gzipped', value: gzipBytes(file) / 1000, unit: 'kB', most: null },
    {
      what: 'all scripts there are, gzipped',
      value: listScripts().reduce((sum, script) => sum + script.gzipBytes / 1000, 0),
      unit: 'kB',
      most: null,
    },
  ]
}
