import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { CATALOGUE } from '../../../src/core/catalogue.ts'
import { compute } from '../../../src/core/compute.ts'
import { type Jigs, USUAL_JIGS } from '../../../src/core/jigs.ts'
import { readNumbers } from '../../../src/core/numbers.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { STARTING_UNITS } from '../../../src/core/quantity.ts'
import { overlap } from '../../../src/drawing/bounds.ts'
import { layAtScale } from '../../../src/drawing/layDrawing.ts'
import { TEMPLATE_PENS } from '../../../src/drawing/pens.ts'
import { plotDrawing } from '../../../src/drawing/plot.ts'
import { boxOf, type Laid } from '../../../src/drawing/sheet.ts'
import { TEMPLATE_NAMES } from '../../../src/drawing/template/template.ts'
import { listTemplates } from '../../../src/drawing/templateDrawingOf.ts'
import { templateName, templatePurpose } from '../../../src/views/fullSize/templateName.ts'
import { templateTitle, templateUse } from '../../../src/words/templates.ts'
import { BY_ARCS, BY_CUTAWAY, BY_KEY_WIDTHS, BY_NECKS, BY_READINGS } from '../../core/everyForm.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { NYLON_STRING } from '../../generators/demoNylon.ts'
import { anyPlan, nearModel, withField } from '../../generators/plans.ts'
import { withCutaway } from '../cutModels.ts'
import { everyTemplate, FULL_SIZE } from '../everyDrawing.ts'

/** Paths to numbers that are not finite. */
function unfit(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, inner]) => unfit(inner, `${path}.${key}`))
}

const unfitIn = (plan: Plan, jigs: Jigs = USUAL_JIGS): string[] =>
  everyTemplate(compute(plan), plan, jigs).flatMap(([name, drawing]) => {
    const laid = layAtScale(drawing, FULL_SIZE, 1)
    return [...unfit(drawing, name), ...unfit(plotDrawing(drawing, laid, TEMPLATE_PENS), `${name}, as ink`)]
  })

describe('any plan gives templates of finite numbers', () => {
  const anyJigs = fc.record({
    mouldClearanceMm: fc.double({ min: 0, max: 10, noNaN: true }),
    slatMm: fc.double({ min: 0, max: 10, noNaN: true }),
    blanketMm: fc.double({ min: 0, max: 20, noNaN: true }),
    caulClearanceMm: fc.double({ min: 0, max: 30, noNaN: true }),
  })
  test.each([
    ['near a model', nearModel],
    ['however little of a guitar it is', anyPlan],
  ])('%s', (_which, plans) => {
    fc.assert(
      fc.property(plans, anyJigs, (plan, jigs) => {
        expect(unfitIn(plan, jigs)).toEqual([])
      }),
      { numRuns: 12 },
    )
  })

  test.each([
    ['arcs', BY_ARCS.slice(0, 8)],
    ['cutaways', BY_CUTAWAY],
    ['key widths', BY_KEY_WIDTHS.slice(0, 3)],
    ['readings', BY_READINGS.slice(0, 2)],
    ['necks', BY_NECKS],
  ])('of every form: %s', (_form, plans) => {
    expect(plans.flatMap((plan) => unfitIn(plan))).toEqual([])
  })
})

const left = (plan: Plan) => withField(plan, 'handed', 'left')
const PLANS: readonly (readonly [string, Plan])[] = [
  ...[STEEL_STRING, NYLON_STRING, SMALL].map(({ name, plan }) => [name, plan] as const),
  ['steel, rounded, left', left(withCutaway(STEEL_STRING.plan, 'rounded'))],
  ['steel, pointed', withCutaway(STEEL_STRING.plan, 'pointed')],
  ['nylon, pointed, left', left(withCutaway(NYLON_STRING.plan, 'pointed'))],
  ['small, rounded', withCutaway(SMALL.plan, 'rounded')],
]
const computedOf = new Map(PLANS.map(([name, plan]) => [name, compute(plan)]))
const TEMPLATES = PLANS.flatMap(([name, plan]) =>
  everyTemplate(computedOf.get(name)!, plan).map(([template, drawing]) => [name, template, drawing] as const),
)

const textsOf = (laid: Laid) => [
  ...laid.dimensions.map(({ figure }) => figure),
  ...laid.stations.flatMap(({ number }) => number ?? []),
  ...laid.labels,
]

describe.each(TEMPLATES)('%s: %s', (model, _template, drawing) => {
  const laid = layAtScale(drawing, FULL_SIZE, 1)

  test('at full size no two figures meet and all stand on the sheet', () => {
    const texts = textsOf(laid)
    const meeting = texts.flatMap((a, i) =>
      texts
        .slice(i + 1)
        .filter((b) => overlap(boxOf(a), boxOf(b)))
        .map((b) => `${a.text} | ${b.text}`),
    )
    expect(meeting).toEqual([])
    const outside = [...texts, ...laid.marks].flatMap((text) => {
      const [box, sheet] = [boxOf(text), laid.box]
      const isInside =
        box.minX >= sheet.minX && box.minY >= sheet.minY && box.maxX <= sheet.maxX && box.maxY <= sheet.maxY
      return isInside ? [] : [text.text]
    })
    expect(outside).toEqual([])
  })

  test('every figure is the number it says it is', () => {
    const { numbers } = computedOf.get(model)!
    for (const { figured } of laid.dimensions) {
      expect(readNumbers(numbers, figured.key)).not.toHaveLength(0)
      expect(figured.value).toEqual(readNumbers(numbers, figured.key)[figured.row ?? 0])
      expect(figured.quantity).toBe(CATALOGUE[figured.key].quantity)
    }
  })
})

/** Of a brace as placed, whether its face stays within 0.05 mm of a straightedge: over half a chord c of its dome a circle rises c²/8R. */
function isStraight(plan: Plan, id: string): boolean {
  const { lengthMm, plan: brace } = compute(plan).geometry.bracing.placed.find((one) => one.id === id)!
  return brace.underside === 'flat' || lengthMm ** 2 / (8 * plan[brace.plate].radiusMm) < 0.05
}

describe('the list of templates', () => {
  const namesOf = (plan: Plan) => listTemplates(compute(plan), plan)
  const of = (plan: Plan, name: string) => namesOf(plan).flatMap((ref) => (ref.name === name ? [ref.of] : []))

  test('follows the order of their names, and names each one once', () => {
    const refs = namesOf(withCutaway(STEEL_STRING.plan, 'pointed'))
    const places = refs.map(({ name }) => TEMPLATE_NAMES.indexOf(name))
    expect(places).toEqual(places.toSorted((a, b) => a - b))
    expect(new Set(refs.map((ref) => `${ref.name} ${ref.of}`)).size).toBe(refs.length)
    expect(new Set(refs.map(({ name }) => name)).size).toBe(TEMPLATE_NAMES.length)
  })

  test('has one half where both are alike, and a blank for each piece of wood', () => {
    expect(of(STEEL_STRING.plan, 'outlineHalf')).toEqual(['bass'])
    expect(of(STEEL_STRING.plan, 'sideBlank')).toEqual(['treble', 'bass'])
    const pointed = withCutaway(STEEL_STRING.plan, 'pointed')
    expect(of(pointed, 'mould')).toEqual(['bass', 'treble'])
    expect(of(pointed, 'bendingForm')).toEqual(['bass', 'treble', 'treble2'])
    expect(of(pointed, 'sideBlank')).toEqual(['treble', 'treble2', 'bass'])
  })

  test('leaves out what makes no sense', () => {
    const flat = withField(withField(STEEL_STRING.plan, 'top.form', 'flat'), 'binding.thicknessMm', 0)
    expect(of(flat, 'dishArch')).toEqual(['back'])
    // Without a binding there still is the channel of a purfling to try.
    expect(of(flat, 'bindingGauge')).toEqual([null])
    const unpurfled = withField(withField(flat, 'binding.topPurflingMm', 0), 'binding.backPurflingMm', 0)
    expect(of(unpurfled, 'bindingGauge')).toEqual([])
    const bare = withField(STEEL_STRING.plan, 'bracing.braces', {})
    expect(of(bare, 'bracingPlan')).toEqual([])
    expect(of(bare, 'braceArch')).toEqual([])
  })

  test('has one arch for twins that are alike, and one for each where a cutaway makes them unlike', () => {
    const ids = Object.keys(STEEL_STRING.plan.bracing.braces)
    expect(of(STEEL_STRING.plan, 'braceArch')).toEqual(ids.filter((id) => !isStraight(STEEL_STRING.plan, id)))
    const cut = of(withCutaway(STEEL_STRING.plan, 'rounded'), 'braceArch')
    expect(cut.filter((one) => one?.endsWith(':treble') !== true)).toEqual(
      ids.filter((id) => !isStraight(STEEL_STRING.plan, id)),
    )
  })

  test('has no arch for a brace that is planed straight', () => {
    const ids = Object.keys(STEEL_STRING.plan.bracing.braces)
    const arched = ids.find((id) => !isStraight(STEEL_STRING.plan, id))!
    const flat = withField(STEEL_STRING.plan, 'bracing.braces', {
      ...STEEL_STRING.plan.bracing.braces,
      [arched]: { ...STEEL_STRING.plan.bracing.braces[arched]!, underside: 'flat' },
    })
    expect(of(STEEL_STRING.plan, 'braceArch')).toContain(arched)
    expect(of(flat, 'braceArch')).not.toContain(arched)
    // On a dome of 14 m the finger braces, 79 and 72 mm long, rise 0.055 and 0.047 mm: one is sawn to an arch, the other is not.
    const shallow = withField(STEEL_STRING.plan, 'top.radiusMm', 14000)
    const fingers = ids.filter((id) => STEEL_STRING.plan.bracing.braces[id]!.kind === 'finger')
    expect(fingers).toHaveLength(2)
    expect(fingers.filter((id) => of(shallow, 'braceArch').includes(id))).toHaveLength(1)
    expect(of(shallow, 'braceArch')).toEqual(ids.filter((id) => !isStraight(shallow, id)))
  })

  test('gives each a title of its own and a use', () => {
    const refs = namesOf(withCutaway(STEEL_STRING.plan, 'pointed'))
    const computed = compute(withCutaway(STEEL_STRING.plan, 'pointed'))
    const titles = refs.map((ref) => templateName(ref, computed))
    expect(new Set(titles).size).toBe(refs.length)
    for (const { name } of refs) expect(templateUse(name)).toMatch(/^[A-Z].*\.$/)
    expect(templateTitle({ name: 'bendingForm', of: 'treble2' }, () => null)).toBe('Bending form, treble side, piece 2')
    const brace = { name: 'braceArch', of: 'x' } as const
    expect(templateTitle(brace, () => ({ numbers: [2], kind: 'cross', plate: 'top' }))).toBe('Brace 2, X brace, top')
    expect(templateTitle(brace, () => ({ numbers: [2, 3], kind: 'tone', plate: 'back' }))).toBe(
      'Braces 2 and 3, tone bar, back',
    )
  })

  test('twins that are alike are called by both their numbers, and those a cutaway makes unlike each by its own', () => {
    const numbersIn = (plan: Plan) => {
      const computed = compute(plan)
      return listTemplates(computed, plan).flatMap((ref) =>
        ref.name === 'braceArch' ? [templateName(ref, computed).match(/\d+/g)!.map(Number)] : [],
      )
    }
    const whole = numbersIn(STEEL_STRING.plan)
    // The X brace comes first on the top, both of its legs by one template.
    expect(whole.some((numbers) => numbers.length === 2)).toBe(true)
    const flat = whole.flat()
    expect(new Set(flat).size).toBe(flat.length)
    const cut = numbersIn(withCutaway(STEEL_STRING.plan, 'rounded'))
    expect(cut.some((numbers) => numbers.length === 1)).toBe(true)
    expect(new Set(cut.flat()).size).toBe(cut.flat().length)
  })

  test('a form says how far its line runs from the outer face, in the shop’s unit', () => {
    const computed = compute(STEEL_STRING.plan)
    const said = (name: 'mould' | 'bendingForm' | 'caul', bodyLength: 'mm' | 'decimalInch') =>
      templatePurpose({ name, of: 'bass' }, computed, { jigs: USUAL_JIGS, units: { ...STARTING_UNITS, bodyLength } })
    // Sides 2.2 mm, slat 0.5, blanket 1.5; the caul 1 mm clear, the mould 0.5.
    expect(said('bendingForm', 'mm')).toContain('4.20 mm inside the outer face')
    expect(said('caul', 'mm')).toContain('3.20 mm inside the outer face')
    expect(said('mould', 'mm')).toContain('0.50 mm outside the outer face')
    expect(said('bendingForm', 'decimalInch')).toContain('0.165')
  })
})
