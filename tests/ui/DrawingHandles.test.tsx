import { fireEvent, render, screen } from '@testing-library/react'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { Point } from '../../src/core/geometry/point.ts'
import { DrawingHandles, type DrawingHands } from '../../src/ui/DrawingHandles.tsx'

/** A sheet on which two pixels are a millimetre, its origin at 10, 20. */
const matrix = { a: 2, d: 2, e: 10, f: 20 }
let frames: FrameRequestCallback[] = []
const nextFrame = () => frames.splice(0).forEach((act) => act(0))

beforeEach(() => {
  frames = []
  vi.stubGlobal('SVGGraphicsElement', SVGElement)
  Object.assign(SVGElement.prototype, { getScreenCTM: () => matrix, setPointerCapture: () => undefined })
  vi.spyOn(globalThis, 'requestAnimationFrame').mockImplementation((act) => frames.push(act))
})
afterEach(() => {
  vi.unstubAllGlobals()
  vi.restoreAllMocks()
})

const hold = (onLetGo = vi.fn<DrawingHands['onLetGo']>()) => {
  const movedTo = vi.fn<DrawingHands['movedTo']>((id, to) => ({
    overlay: [
      {
        kind: 'path',
        role: 'edge',
        commands: [
          ['M', 0, 0],
          ['L', to.x, to.y],
        ],
      },
    ],
    at: { [id]: to },
  }))
  const hands: DrawingHands = {
    targets: [],
    handles: [
      { id: 'from', name: 'First end', at: { x: 5, y: 5 } },
      { id: 'to', name: 'Second end', at: { x: 50, y: 5 } },
    ],
    onChoose: () => undefined,
    movedTo,
    onLetGo,
  }
  const { container } = render(
    <svg>
      <DrawingHandles hands={hands} mmPerUnit={0.5} />
    </svg>,
  )
  const handle = (name: string) => screen.getByRole('button', { name })
  const overlay = () => [...container.querySelectorAll('.hand-overlay path')].map((path) => path.getAttribute('d'))
  /** An event of a pointer at a place of the sheet, mm. */
  const point = (type: 'pointerDown' | 'pointerMove' | 'pointerUp' | 'pointerCancel', { x, y }: Point) => {
    const event = new MouseEvent(type.toLowerCase(), {
      bubbles: true,
      clientX: matrix.a * x + matrix.e,
      clientY: matrix.d * y + matrix.f,
    })
    fireEvent(handle('First end'), event)
  }
  return { movedTo, onLetGo, handle, overlay, point }
}

describe('the handles of a drawing', () => {
  test('what is moved is drawn at most once a frame, and the other handle stays', () => {
    const { movedTo, handle, overlay, point } = hold()
    point('pointerDown', { x: 5, y: 5 })
    point('pointerMove', { x: 9, y: 6 })
    point('pointerMove', { x: 12, y: 8 })
    expect(overlay()).toEqual([])
    nextFrame()
    expect(movedTo.mock.calls).toEqual([['from', { x: 12, y: 8 }]])
    expect(overlay()).toEqual(['M0 0L12 8'])
    expect(handle('First end')).toHaveAttribute('transform', 'translate(12 8)')
    expect(handle('Second end')).toHaveAttribute('transform', 'translate(50 5)')
    point('pointerMove', { x: 20, y: 8 })
    nextFrame()
    expect(overlay()).toEqual(['M0 0L20 8'])
  })

  test('let go, it is told where, and nothing of the move is left', () => {
    const { onLetGo, handle, overlay, point } = hold()
    point('pointerDown', { x: 6, y: 5 })
    point('pointerMove', { x: 16, y: 9 })
    nextFrame()
    point('pointerUp', { x: 16, y: 9 })
    // It was taken hold of a millimetre beside its middle.
    expect(onLetGo.mock.calls).toEqual([['from', { x: 15, y: 9 }, null]])
    expect(overlay()).toEqual([])
    expect(handle('First end')).toHaveAttribute('transform', 'translate(5 5)')
  })

  test('called off, or given up with Escape, it stands where it stood', () => {
    const { onLetGo, handle, overlay, point } = hold()
    for (const giveUp of [
      () => point('pointerCancel', { x: 16, y: 9 }),
      () => fireEvent.keyDown(handle('First end'), { key: 'Escape' }),
    ]) {
      point('pointerDown', { x: 5, y: 5 })
      point('pointerMove', { x: 16, y: 9 })
      nextFrame()
      expect(overlay()).toHaveLength(1)
      giveUp()
      expect(overlay()).toEqual([])
      expect(handle('First end')).toHaveAttribute('transform', 'translate(5 5)')
    }
    expect(onLetGo).not.toHaveBeenCalled()
  })
})
