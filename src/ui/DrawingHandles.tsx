import { type KeyboardEvent, memo, type PointerEvent, useRef } from 'react'
import type { Point } from '../core/geometry/point.ts'
import type { PathCommand, PathShape } from '../drawing/drawing.ts'
import { svgNumber, svgPath } from '../drawing/svgPath.ts'
import './DrawingHandles.css'

/** A place of a drawing that can be taken hold of, in millimetres of the drawing. */
export interface DrawingHandle {
  readonly id: string
  readonly name: string
  readonly at: Point
}

/** A part of a drawing that can be chosen by tapping it. */
export interface DrawingTarget {
  readonly id: string
  readonly name: string
  readonly isChosen: boolean
  readonly commands: readonly PathCommand[]
}

/** What of a drawing can be chosen and moved by hand. Places are told in millimetres of the drawing. */
export interface DrawingHands {
  readonly targets: readonly DrawingTarget[]
  readonly handles: readonly DrawingHandle[]
  /** Drawn over all else, while something is moved. */
  readonly overlay: readonly PathShape[]
  readonly onChoose: (id: string) => void
  /** At most once a frame while it is moved; null: it was let go of where it came from. */
  readonly onMove: (id: string, to: Point | null) => void
  /** `keyAtMs`: when a key moved it, by the clock of the page's events; null: it was dragged. */
  readonly onLetGo: (id: string, to: Point, keyAtMs: number | null) => void
}

const STEP_MM = 1
const FAR_STEP_MM = 10
const STEPS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
}

interface Props {
  readonly hands: DrawingHands
  readonly mmPerUnit: number
}

/** Parts to choose, the handles of the chosen one, and what is moved. */
export function DrawingHandles({ hands, mmPerUnit }: Props) {
  return (
    <>
      <Targets targets={hands.targets} onChoose={hands.onChoose} />
      <g className="hand-overlay" aria-hidden="true">
        {hands.overlay.map((shape, i) => (
          <path key={i} className={`line line-${shape.role}`} d={svgPath(shape.commands)} fill="none" />
        ))}
      </g>
      {hands.handles.map((handle) => (
        <Handle key={handle.id} handle={handle} hands={hands} mmPerUnit={mmPerUnit} />
      ))}
    </>
  )
}

/** They stay as they are while something is moved. */
const Targets = memo(function Targets({ targets, onChoose }: Pick<DrawingHands, 'targets' | 'onChoose'>) {
  return targets.map((target) => <Target key={target.id} target={target} onChoose={onChoose} />)
})

function Target({ target, onChoose }: { readonly target: DrawingTarget; readonly onChoose: (id: string) => void }) {
  const { id, name, isChosen, commands } = target
  const onKey = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return
    event.preventDefault()
    onChoose(id)
  }
  return (
    <g
      className="hand-target"
      data-chosen={isChosen}
      // A part of an svg cannot be a button element.
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
      role="button"
      tabIndex={0}
      aria-label={name}
      aria-pressed={isChosen}
      onClick={() => onChoose(id)}
      onKeyDown={onKey}
    >
      <path className="hand-reach" d={svgPath(commands)} />
      <path className="hand-shape" d={svgPath(commands)} />
    </g>
  )
}

function Handle({
  handle,
  hands,
  mmPerUnit,
}: {
  readonly handle: DrawingHandle
  readonly hands: DrawingHands
  readonly mmPerUnit: number
}) {
  const { id, name, at } = handle
  const { onMove, onLetGo } = hands
  const hold = useRef<{ readonly from: Point; readonly grip: Point; to: Point; frame: number } | null>(null)

  const placeOf = (event: PointerEvent<SVGGElement>): Point | null => {
    const content = event.currentTarget.parentElement
    const matrix = content instanceof SVGGraphicsElement ? content.getScreenCTM() : null
    if (matrix === null || matrix.a === 0 || matrix.d === 0) return null
    return { x: (event.clientX - matrix.e) / matrix.a, y: (event.clientY - matrix.f) / matrix.d }
  }
  const onDown = (event: PointerEvent<SVGGElement>) => {
    const place = placeOf(event)
    if (place === null || (event.pointerType === 'mouse' && event.button !== 0)) return
    event.currentTarget.setPointerCapture(event.pointerId)
    // The finger need not be in the middle of it: what it took hold of stays under it.
    hold.current = { from: at, grip: { x: at.x - place.x, y: at.y - place.y }, to: at, frame: 0 }
  }
  const onPointerMove = (event: PointerEvent<SVGGElement>) => {
    const held = hold.current
    const place = placeOf(event)
    if (held === null || place === null) return
    held.to = { x: place.x + held.grip.x, y: place.y + held.grip.y }
    if (held.frame !== 0) return
    held.frame = requestAnimationFrame(() => {
      held.frame = 0
      if (hold.current === held) onMove(id, held.to)
    })
  }
  const onUp = (event: PointerEvent<SVGGElement>) => {
    const held = hold.current
    if (held === null) return
    hold.current = null
    cancelAnimationFrame(held.frame)
    const moved = Math.hypot(held.to.x - held.from.x, held.to.y - held.from.y) > mmPerUnit * 3
    if (event.type === 'pointercancel' || !moved) onMove(id, null)
    else onLetGo(id, held.to, null)
  }
  const onKey = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && hold.current !== null) {
      hold.current = null
      onMove(id, null)
      return
    }
    const step = STEPS[event.key]
    if (step === undefined || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    event.stopPropagation()
    const mm = event.shiftKey ? FAR_STEP_MM : STEP_MM
    onLetGo(id, { x: at.x + step.x * mm, y: at.y + step.y * mm }, event.timeStamp)
  }
  return (
    <g
      className="hand-handle"
      data-hand="handle"
      // A part of an svg cannot be a button element.
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
      role="button"
      tabIndex={0}
      aria-label={name}
      transform={`translate(${svgNumber(at.x)} ${svgNumber(at.y)})`}
      onPointerDown={onDown}
      onPointerMove={onPointerMove}
      onPointerUp={onUp}
      onPointerCancel={onUp}
      onKeyDown={onKey}
    >
      <g className="steady">
        <circle className="hand-grip" r={svgNumber(24 * mmPerUnit)} />
        <circle className="hand-ring" r={svgNumber(8 * mmPerUnit)} />
      </g>
    </g>
  )
}
