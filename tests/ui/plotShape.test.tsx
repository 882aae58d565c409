import { render } from '@testing-library/react'
import { expect, test } from 'vitest'
import type { PlotMark } from '../../src/papers/page.ts'
import { PlotShape } from '../../src/ui/PlotShape.tsx'

const MARK: PlotMark = {
  kind: 'plot',
  plot: {
    box: { minX: 0, minY: 0, maxX: 100, maxY: 100 },
    strokes: [
      {
        layer: 'cut',
        commands: [
          ['M', 10, 20],
          ['L', 60, 20],
        ],
        penMm: 0.25,
        dashesMm: [2, 1],
        covers: false,
      },
      {
        layer: 'cut',
        commands: [['M', 0, 0], ['L', 5, 5], ['L', 0, 5], ['Z']],
        penMm: 0.25,
        dashesMm: [],
        covers: true,
      },
    ],
    letterings: [{ text: 'TAIL', at: { x: 30, y: 40 }, sizeMm: 3, heightMm: 2.2, turnDeg: -90 }],
  },
  xMm: 12,
  yMm: 14,
  widthMm: 80,
  heightMm: 60,
  fromXMm: 5,
  fromYMm: 8,
  timesAcross: 1.25,
  timesAlong: 0.8,
}

test('a plot stands where its mark says, cut off at its area', () => {
  const { container } = render(
    <svg>
      <PlotShape mark={MARK} />
    </svg>,
  )
  const frame = container.querySelector('svg svg')!
  expect(['x', 'y', 'width', 'height', 'overflow'].map((name) => frame.getAttribute(name))).toEqual([
    '12',
    '14',
    '80',
    '60',
    'hidden',
  ])
  const transform = frame.querySelector('g')!.getAttribute('transform')!
  const [across, along, x, y] = transform.match(/-?[\d.]+/g)!.map(Number) as [number, number, number, number]
  // The line from 10, 20 to 60, 20 of the plot on the page.
  const d = frame.querySelector('path')!.getAttribute('d')!
  const [x0, y0, x1] = d.match(/-?[\d.]+/g)!.map(Number) as [number, number, number]
  expect([12 + across * (x0 + x), 14 + along * (y0 + y), 12 + across * (x1 + x)]).toEqual([18.25, 23.6, 80.75])
  expect(frame.querySelector('path')).toHaveAttribute('stroke-dasharray', '2 1')
  expect(frame.querySelectorAll('.paper-covers')).toHaveLength(1)
  const text = frame.querySelector('text')!
  expect(text).toHaveTextContent('TAIL')
  expect(text).toHaveAttribute('transform', 'rotate(-90 30 40)')
})
