import { render, screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import type { NumberKey } from '../../src/core/catalogue.ts'
import { NumberHelp } from '../../src/views/sheets/NumberHelp.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const helpOf = (number: NumberKey) => {
  render(
    <FakeBench watched={watchedBench(STEEL_STRING.plan)}>
      <NumberHelp number={number} onClose={() => undefined} />
    </FakeBench>,
  )
  const help = screen.getByRole('dialog')
  const headings = within(help).getAllByRole('heading', { level: 3 })
  return { help, headings: headings.map((heading) => heading.textContent) }
}

describe('the help of a number', () => {
  it('shows the sum and its source above the tolerance, and the fields it hangs on', () => {
    const { help, headings } = helpOf('scale.jointToSaddleMm')
    expect(headings).toEqual([
      'How it is measured',
      'How it is worked out',
      'Tolerance',
      'It hangs on',
      'How sure it is',
    ])
    expect(within(help).getByText(/S × 2\^\(−J\/12\)/)).toBeInTheDocument()
    expect(within(help).getByText(/ISO 16/)).toBeInTheDocument()
    expect(within(help).getByRole('button', { name: /^Scale/ })).toBeInTheDocument()
  })

  it('says of a value handed on that it is as entered', () => {
    const { help } = helpOf('sides.thicknessMm')
    expect(within(help).getByText('As entered.')).toBeInTheDocument()
    expect(within(help).getByText('Entered, not computed.')).toBeInTheDocument()
  })

  it('shows the sum of what no one measures', () => {
    const { help, headings } = helpOf('back.axisAtMm')
    expect(headings).toContain('How it is worked out')
    expect(within(help).getByText(/no one measures it/)).toBeInTheDocument()
    expect(within(help).getByText(/√\(L² \+ \(T − N\)²\)/)).toBeInTheDocument()
  })
})
