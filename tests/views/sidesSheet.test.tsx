import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { SidesSheet } from '../../src/views/sheets/SidesSheet.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const show = () => {
  const watched = watchedBench(STEEL_STRING.plan)
  render(
    <FakeBench watched={watched}>
      <SidesSheet />
    </FakeBench>,
  )
  return watched
}
// By text and label: looking for roles through some thousand cells takes seconds.
const depthHere = () => screen.getByText('Rim depth here, without plates').closest('.big-figure')?.textContent
const press = (text: RegExp) => userEvent.click(screen.getByText(text))
const station = (row: number) => screen.getAllByText(String(row), { selector: 'button.row-choice' }).at(-1)!

describe('the sides sheet', () => {
  it('answers at the waist first, and at the place that is tapped in the table', async () => {
    show()
    expect(screen.getByText('Waist', { selector: 'strong' })).toBeInTheDocument()
    await userEvent.click(station(0))
    expect(depthHere()).toContain('106.0')
    expect(screen.getByText('Tail', { selector: 'strong' })).toBeInTheDocument()
    expect(station(0)).toHaveAttribute('aria-pressed', 'true')
  })

  it('answers at a typed distance, from the origin the maker prefers', async () => {
    show()
    await userEvent.click(screen.getAllByLabelText('Neck edge')[0]!)
    await userEvent.click(screen.getByLabelText('Along the centreline', { selector: '[type=radio]' }))
    const distance = screen.getByLabelText('Along the centreline, from the neck edge')
    await userEvent.clear(distance)
    await userEvent.type(distance, '496')
    expect(depthHere()).toContain('106.0')
    await userEvent.clear(distance)
    await userEvent.click(distance)
    await userEvent.paste('900')
    expect(distance).toHaveAttribute('aria-invalid', 'true')
    expect(depthHere()).toContain('106.0')
  })

  it('walks from station to station', async () => {
    show()
    await userEvent.click(station(3))
    await press(/Toward the neck/)
    expect(screen.getByText('Station 4', { selector: 'strong' })).toBeInTheDocument()
    await press(/Toward the tail/)
    await press(/Toward the tail/)
    expect(screen.getByText('Station 2', { selector: 'strong' })).toBeInTheDocument()
  })

  it('follows a typed depth at once', async () => {
    show()
    await userEvent.click(station(0))
    const depth = screen.getByLabelText('Rim depth at the tail')
    await userEvent.clear(depth)
    await userEvent.type(depth, '4 1/4"')
    expect(depthHere()).toContain('108.0')
  })

  it('gives the table away with units in the head and decimals in the cells', async () => {
    show()
    const user = userEvent.setup()
    await user.click(screen.getByText('Copy table'))
    const text = await navigator.clipboard.readText()
    const [head, first] = text.split('\n')
    expect(head).toContain('Rim depth, without plates (mm)')
    expect(head).toContain('Bevel of the back edge (deg)')
    expect(first?.split('\t').slice(0, 4)).toEqual(['Tail', '0.0', '0.0', '106.0'])
  })
})
