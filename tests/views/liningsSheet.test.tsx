import { cleanup, render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import { LiningsSheet } from '../../src/views/sheets/LiningsSheet.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const PLAN: Plan = {
  ...STEEL_STRING.plan,
  rim: { ...STEEL_STRING.plan.rim, sideThicknessMm: 2.2 },
  linings: {
    top: { kind: 'reversedKerf', widthMm: 6, heightMm: 16 },
    back: { kind: 'kerfed', widthMm: 7, heightMm: 18 },
    wastePercent: 10,
  },
  binding: { heightMm: 6, thicknessMm: 1.8, topPurflingMm: 1.2, backPurflingMm: 0.5 },
  sideBraces: { form: 'wood', atMm: null, spacingMm: 90, widthMm: 8, thicknessMm: 2.5, ends: 'betweenLinings' },
  caul: { spanMm: 300, widthMm: 30, heightMm: 20, modulusGPa: 12, forceN: 200 },
}
const show = (plan: Plan = PLAN) => {
  const watched = watchedBench(plan)
  render(
    <FakeBench watched={watched}>
      <LiningsSheet />
    </FakeBench>,
  )
  return watched
}
// By text and label: looking for roles through some hundred cells takes seconds.
const figure = (name: string) => screen.getAllByText(name)[0]!.closest('.big-figure')
const field = (name: string) => screen.getByLabelText(name, { selector: 'input' })
const retype = async (name: string, text: string) => {
  await userEvent.clear(field(name))
  await userEvent.click(field(name))
  await userEvent.paste(text)
}
const press = (text: string) => userEvent.click(screen.getByText(text))

describe('the linings sheet', () => {
  it('says what is left to glue the plates to, once binding and purfling are in', async () => {
    show()
    // 2.2 + 6 - 1.8 - 1.2 and 2.2 + 7 - 1.8 - 0.5
    expect(figure('Top lining, ledge left')).toHaveTextContent('5.2 mm')
    expect(figure('Back lining, ledge left')).toHaveTextContent('6.9 mm')
    await retype('Top lining, width', '3.5')
    expect(figure('Top lining, ledge left')).toHaveTextContent('2.7 mm')
    const finding = screen.getByText(/Little is left to glue the top to/u).closest('article')
    expect(finding).toHaveTextContent('only 2.7 mm wide')
  })

  it('shapes the caul by beam theory, and says that it is an estimate', async () => {
    show()
    // I = 30 x 20^3 / 12 = 20000 mm4; 200 x 300^3 / (48 x 12000 x 20000) = 0.46875 mm
    expect(figure('Caul, bump at its middle (estimate)')).toHaveTextContent('0.47 mm')
    expect(figure('Caul, force of each clamp (estimate)')).toHaveTextContent('100 N')
    // (200 x 300 / 4) / (30 x 20^2 / 6) = 7.5 MPa
    expect(figure('Caul, stress at its middle (estimate)')).toHaveTextContent('7.5 MPa')
    await retype('Caul, force wanted', '0.4 kN')
    expect(figure('Caul, bump at its middle (estimate)')).toHaveTextContent('0.94 mm')
  })

  it('answers at the place that is tapped in the table of named places', async () => {
    show()
    expect(screen.getByText('Tail', { selector: 'strong' })).toBeInTheDocument()
    await userEvent.click(screen.getByText('Waist', { selector: 'button.row-choice' }))
    expect(screen.getByText('Waist', { selector: 'strong' })).toBeInTheDocument()
    const row = screen.getByText('Waist', { selector: 'button.row-choice' }).closest('tr')
    const [, , proud] = within(row!).getAllByRole('cell')
    expect(figure('Top lining here, over the outer corner')).toHaveTextContent(`: ${proud!.textContent}`)
  })

  it('takes the places of the side braces in hand, one by one, and gives them back', async () => {
    const watched = show()
    const places = () => watched.record.doc.plan.sideBraces.atMm
    await press('Enter the places')
    const spaced = places()
    expect(spaced?.length).toBeGreaterThan(5)
    // Evenly spaced, no further apart than 90 mm.
    const steps = spaced!.slice(1).map((at, i) => at - spaced![i]!)
    expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(1e-6)
    expect(Math.max(...steps)).toBeLessThanOrEqual(90)
    expect(screen.queryByLabelText('Side braces apart, at most')).not.toBeInTheDocument()

    await retype('Place 1', '120')
    expect(places()?.[0]).toBe(120)
    await userEvent.click(screen.getByLabelText('Remove: Place 2'))
    expect(places()).toHaveLength(spaced!.length - 1)
    await press('Add a place')
    expect(places()).toHaveLength(spaced!.length)
    await press('Space them evenly')
    expect(places()).toBeNull()
    expect(watched.refused).toBe(0)
  })

  it('gives the side braces away as a table, a row each', async () => {
    const user = userEvent.setup()
    show({ ...PLAN, sideBraces: { ...PLAN.sideBraces, atMm: [400, 150] } })
    await user.click(screen.getAllByText('Copy table')[0]!)
    const [head, first, second, end] = (await navigator.clipboard.readText()).trimEnd().split('\n')
    expect(head).toContain('Side brace, length (mm)')
    expect(first?.split('\t').slice(0, 2)).toEqual(['1', '150.0'])
    expect(second?.split('\t').slice(0, 2)).toEqual(['2', '400.0'])
    expect(second?.split('\t')[3]).toBe('250.0')
    expect(end).toBeUndefined()
  })

  it('has tables of the treble side only where a cutaway makes it differ', async () => {
    const pointed: Plan['outline']['cutaway'] = {
      form: 'pointed',
      leavesAtMm: 430,
      hornRadiusMm: 25,
      hollowRadiusMm: 70,
      meetsNeckAtMm: 32,
    }
    show({ ...PLAN, outline: { ...PLAN.outline, cutaway: { ...pointed, form: 'none' } } })
    expect(screen.queryByText('Side braces, treble side')).not.toBeInTheDocument()
    cleanup()
    show({ ...PLAN, outline: { ...PLAN.outline, cutaway: pointed } })
    expect(screen.getByText('Side braces, treble side', { selector: 'h2' })).toBeInTheDocument()
    const table = screen.getByLabelText('Named places of a treble side of its own', { selector: '.table-scroll' })
    expect(within(table).getByText('Horn')).toBeInTheDocument()
    expect(within(table).getAllByRole('row')).toHaveLength(7)
  })

  it('has no braces to show where none are wanted, and keeps their fields', async () => {
    const watched = show()
    await userEvent.click(screen.getByLabelText('None'))
    expect(screen.queryByText('Enter the places')).not.toBeInTheDocument()
    expect(screen.queryByLabelText('Side brace, width')).not.toBeInTheDocument()
    expect(watched.record.doc.plan.sideBraces.widthMm).toBe(8)
  })
})
