// @vitest-environment jsdom
import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import { FIELDS } from '../../src/record/fields.ts'
import { DecimalField, type DecimalRange } from '../../src/ui/DecimalField.tsx'
import { Bound, makeBench } from './boundField.tsx'

afterEach(cleanup)

function show(start: number | null, range: DecimalRange) {
  const bench = makeBench<number | null>()
  render(
    <Bound start={start} bench={bench}>
      {(binding) => <DecimalField label="Stiffness" binding={binding} range={range} />}
    </Bound>,
  )
  return { bench, input: screen.getByLabelText<HTMLInputElement>('Stiffness'), user: userEvent.setup() }
}
const describedBy = (input: HTMLElement): string =>
  document.getElementById(input.getAttribute('aria-describedby') ?? '')?.textContent ?? ''

describe('a decimal field', () => {
  it('shows its value with its unit behind it, and takes a comma or another unit of its kind', async () => {
    const { bench, input, user } = show(12.5, FIELDS['caul.modulusGPa'])
    expect(input.value).toBe('12.5')
    expect(input.parentElement).toHaveTextContent('GPa')
    await user.clear(input)
    await user.type(input, '9,75')
    expect(bench.taken.at(-1)).toBe(9.75)
    await user.clear(input)
    await user.click(input)
    await user.paste('11000 MPa')
    expect(bench.taken.at(-1)).toBe(11)
    await user.tab()
    expect(input.value).toBe('11')
  })

  it('says what may stand there when a text is out of range or makes no sense, and keeps what stood before', async () => {
    const { bench, input, user } = show(15, FIELDS['linings.wastePercent'])
    await user.clear(input)
    await user.click(input)
    await user.paste('101')
    expect(input).toHaveAttribute('aria-invalid', 'true')
    expect(describedBy(input)).toBe('Stiffness of 101% is more than can be built here: it may be 0% – 100%.')
    await user.clear(input)
    await user.paste('10 mm')
    expect(describedBy(input)).toContain('makes no sense here. Write it like 50%. It may be 0% – 100%.')
    expect(bench.taken).toEqual([])
  })

  it('asks whether a comma sets off thousands', async () => {
    const { bench, input, user } = show(150, FIELDS['caul.forceN'])
    await user.clear(input)
    await user.click(input)
    await user.paste('1,200')
    await user.click(screen.getByRole('button', { name: '1200' }))
    expect(bench.taken.at(-1)).toBe(1200)
  })
})
