import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { AirSheet } from '../../src/views/sheets/box/AirSheet.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const idOf = (i: number) => `b0c5e000-0000-4000-8000-${String(i).padStart(12, '0')}`
const tap = (number: string, ratio: number) => ({ number, title: 'Meadow', ratio })

/** The sheet of a steel-string in a shop that has tapped steel-strings at these parts of their rigid boxes, and one small box. */
function show(ratios: readonly number[]) {
  const watched = watchedBench(STEEL_STRING.plan)
  const boxes = ratios.map((ratio, i) => [idOf(i), tap(`26-0${i + 1}`, ratio)] as const)
  render(
    <FakeBench
      watched={watched}
      taps={{ ...Object.fromEntries(boxes), [idOf(99)]: tap('26-99', 0.95) }}
      families={{ ...Object.fromEntries(boxes.map(([id]) => [id, 'steelString' as const])), [idOf(99)]: 'small' }}
    >
      <AirSheet />
    </FakeBench>,
  )
  return watched
}
const shopPart = () => within(screen.getByRole('region', { name: 'By the boxes of this shop' }))
const heard = () => screen.getByLabelText('Heard when tapped', { selector: 'input' })
const rigidHz = compute(STEEL_STRING.plan).numbers.air.rigidHz as number

describe('the air sheet', () => {
  it('goes by the band until three boxes of the family were tapped, and names them', () => {
    show([0.75, 0.8])
    expect(shopPart().getByText(/^2 other boxes of this family have been tapped\./)).toBeInTheDocument()
    expect(
      shopPart()
        .getAllByRole('listitem')
        .map((item) => item.textContent),
    ).toEqual(['26-01 Meadow, heard at 0.750 of its rigid box', '26-02 Meadow, heard at 0.800 of its rigid box'])
    expect(shopPart().getByText(/not counted: 26-99 Meadow/)).toBeInTheDocument()
    expect(shopPart().queryByText(/to be expected between/)).not.toBeInTheDocument()
  })

  it('three of the family tell it, without the box of another one', () => {
    show([0.75, 0.8, 0.85])
    const said = shopPart().getByText(/to be expected between/).textContent
    const [least, greatest, mean] = [...said.matchAll(/(\d+) Hz/gu)].map(([, hz]) => Number(hz))
    expect(least).toBe(Math.round(0.75 * rigidHz))
    expect(greatest).toBe(Math.round(0.85 * rigidHz))
    expect(mean).toBe(Math.round(0.8 * rigidHz))
    expect(said).not.toContain('cents')
  })

  it('takes a note for what was heard, and names hertz as a note with their part of the rigid box', async () => {
    const watched = show([])
    await userEvent.type(heard(), 'G#2')
    await userEvent.tab()
    // A semitone under A2.
    expect(watched.record.doc.plan.air.heardHz).toBeCloseTo(110 / 2 ** (1 / 12), 9)
    await userEvent.clear(heard())
    await userEvent.type(heard(), '110')
    await userEvent.tab()
    const said = screen.getByRole('region', { name: 'What was heard' })
    expect(said).toHaveTextContent('110 Hz: A2.')
    expect(said).toHaveTextContent(`That is ${(110 / rigidHz).toFixed(3)} of the rigid box.`)
  })

  it('shows a note by what stands in the field where it can be read as none', async () => {
    show([])
    await userEvent.type(heard(), 'H2')
    expect(screen.getByText(/Write it like 104 Hz or G#2 \+3\./)).toBeInTheDocument()
  })

  it('does not say that no box was tapped once this one is kept', async () => {
    show([])
    expect(shopPart().getByText(/Once this one is closed/)).toBeInTheDocument()
    await userEvent.type(heard(), '104')
    await userEvent.tab()
    await userEvent.click(screen.getByRole('button', { name: 'Keep it among the shop’s boxes' }))
    expect(screen.getByRole('button', { name: 'Kept among the shop’s boxes.' })).toBeInTheDocument()
    expect(shopPart().getByText(/^No other box of this family/)).toBeInTheDocument()
    expect(shopPart().queryByText(/Once this one is closed/)).not.toBeInTheDocument()
  })

  it('takes a temperature in Fahrenheit', async () => {
    const watched = show([])
    const field = screen.getByLabelText('Temperature', { selector: 'input' })
    await userEvent.clear(field)
    await userEvent.type(field, '77 F')
    await userEvent.tab()
    expect(watched.record.doc.plan.air.temperatureC).toBeCloseTo(25, 9)
  })
})
