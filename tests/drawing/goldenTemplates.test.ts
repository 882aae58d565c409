import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { USUAL_JIGS } from '../../src/core/jigs.ts'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import type { TemplateRef } from '../../src/drawing/template/template.ts'
import { templateDrawingOf } from '../../src/drawing/templateDrawingOf.ts'
import { writePlotSvg } from '../../src/files/svg/writePlotSvg.ts'
import { templatePlot } from '../../src/papers/fullSize/templatePlot.ts'
import { PAPER_LETTERING } from '../../src/words/paperLettering.ts'
import { FILE_LAYER_WORDS } from '../../src/words/press.ts'
import { templateTitle, templateUse } from '../../src/words/templates.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'

/** Accepted templates to look at, as they leave in an SVG. One that comes out otherwise is written beside as `-changed`: look at both. */
const FOLDER = new URL('../golden/', import.meta.url)
const { plan } = STEEL_STRING
const computed = compute(plan)

const drawn = (ref: TemplateRef): string => {
  const title = templateTitle(ref, () => null)
  const plot = templatePlot({
    drawing: templateDrawingOf(ref, computed, plan, USUAL_JIGS),
    title,
    use: templateUse(ref.name),
    doc: { number: '26-07', title: 'Fourteen-fret steel-string' },
    shop: { units: STARTING_UNITS, name: 'Saltmarsh Bench' },
    revisionCode: '7QK4ZD',
    dateIso: '2027-03-12',
    words: PAPER_LETTERING,
  })
  return writePlotSvg(plot, { title, layerNames: FILE_LAYER_WORDS }).replaceAll(/-?\d+\.\d{4,}/g, (number) =>
    String(Math.round(Number(number) * 1e3) / 1e3),
  )
}

describe('accepted templates', () => {
  test.each<[string, TemplateRef]>([
    ['outlineHalf', { name: 'outlineHalf', of: 'bass' }],
    ['contourBoardTail', { name: 'contourBoard', of: 'tail' }],
    ['bridgeGauge', { name: 'bridgeGauge', of: null }],
  ])('%s', (name, ref) => {
    const svg = drawn(ref)
    const accepted = new URL(`template-${name}.svg`, FOLDER)
    const changed = new URL(`template-${name}-changed.svg`, FOLDER)
    if (!existsSync(accepted) && process.env['CI'] === undefined) writeFileSync(accepted, svg)
    if (readFileSync(accepted, 'utf8') === svg) rmSync(changed, { force: true })
    else {
      writeFileSync(changed, svg)
      expect.fail(`${name} is drawn otherwise than accepted: look at tests/golden/template-${name}-changed.svg`)
    }
  })
})
