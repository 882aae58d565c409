import type { PlateSide } from '../../core/boxPlan.ts'
import type { Computed } from '../../core/compute.ts'
import type { EdgeRow } from '../../core/instrument/edgeCut.ts'
import type { RimPlace } from '../../core/instrument/rim.ts'
import type { NumberKey } from '../../core/numbers.ts'
import type { Point } from '../../core/geometry/point.ts'
import type { Plan } from '../../core/plan.ts'
import { shapesBounds } from '../bounds.ts'
import { label, ordinate } from '../dimension.ts'
import type { Drawing, EdgeMark, LabelWord, Shape } from '../drawing.ts'
import { figured } from '../figured.ts'
import { closed, drawn, through } from '../line.ts'

/** One gauge without its two steps; higher where the steps ask for it. */
const WIDTH_MM = 32
const LEAST_HEIGHT_MM = 46
/** Left between the steps of top and back, for the place's name. */
const BETWEEN_MM = 24
const APART_MM = 6
const IN_A_ROW = 4
const BESIDE_MM = 1
const LINE_MM = 5

export type GaugedEdges = Pick<Plan, 'binding' | 'edges'>

/** What one gauge checks: the steps of top and back, 0 high where there is none, and how deep they reach. */
interface Gauge {
  readonly words: readonly (LabelWord | EdgeMark)[]
  readonly steps: Readonly<Record<PlateSide, Step>>
}
interface Step {
  readonly heightMm: number
  readonly depthMm: number
  readonly figure: { readonly key: NumberKey; readonly row: number } | null
}

const PLACE_WORDS: Readonly<Record<RimPlace, LabelWord | EdgeMark>> = {
  tail: 'tail',
  lowerBout: 'lowerBout',
  waist: 'waist',
  upperBout: 'upperBout',
  horn: 'hornTip',
  neck: 'neck',
}

/**
 * Gauges for the ledges of the bindings, one for each named place of the rim, and one for the purfling channels. Each is slid along the side, held
 * square to it: the step at its upper left rests on the floor of the top's ledge and meets its wall, and the gauge's upper edge comes level with
 * the plate there. Turned upside down, the other step does the same at the back. A ledge square to the side is so high at its wall that the binding's
 * inner corner comes to its height: what the dome rises over the binding's thickness is in it. An empty drawing where there is no such strip.
 */
export function bindingGauge(computed: Computed, plan: GaugedEdges): Drawing {
  const gauges = gaugesOf(computed, plan)
  const highest = Math.max(0, ...gauges.map(({ steps }) => steps.top.heightMm + steps.back.heightMm))
  const heightMm = Math.max(LEAST_HEIGHT_MM, highest + BETWEEN_MM)
  const deepest = Math.max(0, ...gauges.flatMap(({ steps }) => [steps.top.depthMm, steps.back.depthMm]))
  const stepX = WIDTH_MM + 2 * deepest + APART_MM
  const shapes = gauges.flatMap((gauge, i) =>
    gaugeShapes(computed, gauge, heightMm, {
      x: (i % IN_A_ROW) * stepX,
      y: Math.floor(i / IN_A_ROW) * (heightMm + APART_MM),
    }),
  )
  return {
    name: 'bindingGauge',
    seenFrom: 'section',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: {},
    shapes,
  }
}

const NO_STEP: Step = { heightMm: 0, depthMm: 0, figure: null }

function gaugesOf({ numbers, geometry }: Computed, { binding, edges }: GaugedEdges): Gauge[] {
  const { isMirrored } = geometry.outline
  const ledges = (list: 'edgePlaces' | 'trebleEdgePlaces', sides: readonly EdgeMark[]): Gauge[] =>
    numbers[list].flatMap((place, row): Gauge[] => {
      const steps = {
        top: ledgeStep(place.topBindingSetMm, `${list}[].topBindingSetMm`, row, binding.thicknessMm),
        back: ledgeStep(place.backBindingSetMm, `${list}[].backBindingSetMm`, row, binding.thicknessMm),
      }
      return hasStep(steps) ? [{ words: [PLACE_WORDS[place.place], ...sides], steps }] : []
    })
  const channel = (purflingMm: number): Step =>
    purflingMm > 0
      ? { heightMm: edges.purflingDepthMm, depthMm: binding.thicknessMm + purflingMm, figure: null }
      : NO_STEP
  const channels = { top: channel(binding.topPurflingMm), back: channel(binding.backPurflingMm) }
  return [
    ...ledges('edgePlaces', isMirrored ? [] : ['bass']),
    ...ledges('trebleEdgePlaces', ['treble']),
    ...(hasStep(channels) ? [{ words: ['purfling' as const], steps: channels }] : []),
  ]
}

const hasStep = ({ top, back }: Gauge['steps']): boolean => top.heightMm > 0 || back.heightMm > 0

const ledgeStep = (set: EdgeRow['topBindingSetMm'], key: NumberKey, row: number, depthMm: number): Step =>
  typeof set === 'number' && set > 0 ? { heightMm: set, depthMm, figure: { key, row } } : NO_STEP

/** One gauge, the corner where its upper edge meets the side at `at`. */
function gaugeShapes({ numbers }: Computed, { words, steps }: Gauge, heightMm: number, at: Point): Shape[] {
  const on = (x: number, y: number): Point => ({ x: at.x + x, y: at.y + y })
  const { top, back } = steps
  const backFrom = heightMm - back.heightMm
  const outline = [
    on(-top.depthMm, 0),
    on(WIDTH_MM, 0),
    on(WIDTH_MM, backFrom),
    on(WIDTH_MM + back.depthMm, backFrom),
    on(WIDTH_MM + back.depthMm, heightMm),
    on(0, heightMm),
    on(0, top.heightMm),
    on(-top.depthMm, top.heightMm),
  ]
  const [topY, backY] = [Math.max(top.heightMm, LINE_MM) / 2, heightMm - Math.max(back.heightMm, LINE_MM) / 2]
  const figureOf = ({ figure }: Step, from: Point, way: 1 | -1): Shape[] =>
    figure === null ? [] : [ordinate(figured(numbers, figure.key, figure.row), from, { x: way, y: 0 }, 0)]
  const word = (one: LabelWord | EdgeMark, where: Point, way: 1 | -1 | 0): Shape => ({
    ...label(one, where, { x: way, y: 0 }),
    isOptional: false,
  })
  return [
    // Drawn through: on a step of two millimetres a dash would leave its corner open.
    drawn('edge', closed(through(outline))),
    ...(top.heightMm > 0 ? [word('topPlate', on(WIDTH_MM - BESIDE_MM, topY), -1)] : []),
    ...(back.heightMm > 0 ? [word('backPlate', on(BESIDE_MM, backY), 1)] : []),
    ...figureOf(top, on(BESIDE_MM, topY), 1),
    ...figureOf(back, on(WIDTH_MM - BESIDE_MM, backY), -1),
    ...words.map((one, i) => word(one, on(WIDTH_MM / 2, heightMm / 2 + (i - (words.length - 1) / 2) * LINE_MM), 0)),
  ]
}
