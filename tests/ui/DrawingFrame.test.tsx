import { fireEvent, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, test, vi } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { NumberRef } from '../../src/drawing/drawing.ts'
import { planDrawing } from '../../src/drawing/planDrawing.ts'
import { sideDrawing } from '../../src/drawing/sideDrawing.ts'
import { DrawingFrame } from '../../src/ui/DrawingFrame.tsx'
import { plainValue } from '../drawing/everyDrawing.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { DRAWING_WORDS } from '../../src/words/drawings.ts'

const computed = compute(STEEL_STRING.plan)
const plan = planDrawing(computed)
const nameOf = ({ key, row }: NumberRef) => `${key} ${row ?? ''}`.trim()

describe('a drawing in its frame', () => {
  test('without tapping it is one picture with a name', () => {
    render(<DrawingFrame mode="screen" drawing={plan} told={DRAWING_WORDS.plan} formatValue={plainValue} />)
    expect(screen.getByRole('img', { name: /plan of the body/i })).toBeInTheDocument()
    expect(screen.getByText('Seen from the front')).toBeVisible()
    expect(screen.getByText('TREBLE')).toBeInTheDocument()
  })

  test('a figure is tapped by hand and by key, and is lit when it is the one in hand', async () => {
    const onTap = vi.fn<(ref: NumberRef) => void>()
    const lit = { key: 'body.waistMm', row: null } as const
    render(
      <DrawingFrame
        mode="screen"
        drawing={plan}
        told={DRAWING_WORDS.plan}
        formatValue={plainValue}
        lit={lit}
        tapping={{ onTap, nameOf }}
      />,
    )
    const waist = screen.getByRole('button', { name: 'body.waistMm: 238.0' })
    expect(waist).toHaveAttribute('aria-pressed', 'true')
    expect(screen.getByRole('button', { name: 'body.lowerBoutMm: 392.0' })).toHaveAttribute('aria-pressed', 'false')
    await userEvent.click(waist)
    expect(onTap).toHaveBeenLastCalledWith({ key: 'body.waistMm', row: null })
    fireEvent.keyDown(screen.getByRole('button', { name: 'body.lowerBoutMm: 392.0' }), { key: 'Enter' })
    expect(onTap).toHaveBeenLastCalledWith({ key: 'body.lowerBoutMm', row: null })
  })

  test('heights are stated and changed a step at a time, no lower than true', async () => {
    const onChange = vi.fn<(times: number) => void>()
    const frame = (times: number) => (
      <DrawingFrame
        mode="screen"
        drawing={sideDrawing(computed, times)}
        told={DRAWING_WORDS.side}
        formatValue={plainValue}
        heights={{ most: 20, onChange }}
      />
    )
    const { rerender } = render(frame(10))
    expect(screen.getByText(/heights × 10/)).toBeVisible()
    await userEvent.click(screen.getByRole('button', { name: 'Higher' }))
    expect(onChange).toHaveBeenLastCalledWith(11)
    rerender(frame(1))
    expect(screen.getByRole('button', { name: 'Lower' })).toBeDisabled()
  })

  test('on paper it stands still at the width it is given', () => {
    const { container } = render(
      <DrawingFrame
        mode="paper"
        drawing={plan}
        told={DRAWING_WORDS.plan}
        formatValue={plainValue}
        widthMm={90}
        heightMm={60}
      />,
    )
    const svg = container.querySelector('svg')!
    expect(svg).toHaveAttribute('width', '90mm')
    expect(Number.parseFloat(svg.getAttribute('height')!)).toBeLessThanOrEqual(60)
    expect(screen.queryByRole('button')).toBeNull()
    expect(container.querySelectorAll('[style]')).toHaveLength(0)
  })
})
