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

/** While a handle is moved: what is drawn over all else, and where the handles stand. */
export interface HandsMoved {
  readonly overlay: readonly PathShape[]
  readonly at: Readonly<Record<string, Point>>
}

/** What of a drawing can be chosen and moved by hand. Places are told in millimetres of the drawing. */
export interface DrawingHands {
  readonly targets: readonly DrawingTarget[]
  readonly handles: readonly DrawingHandle[]
  readonly onChoose: (id: string) => void
  /** What is shown while a handle is moved there; asked at most once a frame. Nothing else of the sheet is drawn anew meanwhile. */
  readonly movedTo: (id: string, to: Point) => HandsMoved
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

/**
 * Parts to choose, the handles of the chosen one, and what is moved. A move sets the few attributes it changes, as moving and enlarging do,
 * and renders nothing: it comes with every frame, and costs half as much so.
 */
export function DrawingHandles({ hands, mmPerUnit }: Props) {
  const { targets, handles, onChoose, movedTo, onLetGo } = hands
  const overlay = useRef<SVGGElement>(null)
  const groups = useRef(new Map<string, SVGGElement>())
  const show = (moved: HandsMoved | null) => {
    if (overlay.current !== null) drawOver(overlay.current, moved?.overlay ?? [])
    for (const { id, at } of handles) groups.current.get(id)?.setAttribute('transform', placedAt(moved?.at[id] ?? at))
  }
  return (
    <>
      <Targets targets={targets} onChoose={onChoose} />
      <g className="hand-overlay" aria-hidden="true" ref={overlay} />
      {handles.map((handle) => (
        <Handle
          key={handle.id}
          {...handle}
          mmPerUnit={mmPerUnit}
          keep={(group) => {
            groups.current.set(handle.id, group)
            return () => groups.current.delete(handle.id)
          }}
          onMove={(id, to) => show(to === null ? null : movedTo(id, to))}
          onLetGo={(id, to, keyAtMs) => {
            show(null)
            onLetGo(id, to, keyAtMs)
          }}
        />
      ))}
    </>
  )
}

const placedAt = ({ x, y }: Point): string => `translate(${svgNumber(x)} ${svgNumber(y)})`

/** Makes these shapes, and no others, stand in a group that is drawn in by nothing else. */
function drawOver(group: SVGGElement, shapes: readonly PathShape[]): void {
  while (group.childElementCount > shapes.length) group.lastElementChild?.remove()
  shapes.forEach(({ role, commands }, i) => {
    const known = group.children[i]
    const path = known ?? group.ownerDocument.createElementNS(group.namespaceURI, 'path')
    path.setAttribute('class', `line line-${role}`)
    path.setAttribute('fill', 'none')
    path.setAttribute('d', svgPath(commands))
    if (known === undefined) group.append(path)
  })
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

interface HandleProps extends DrawingHandle, Pick<DrawingHands, 'onLetGo'> {
  readonly mmPerUnit: number
  /** At most once a frame while it is moved; null: it was let go of where it came from. */
  readonly onMove: (id: string, to: Point | null) => void
  /** Is given its group once that stands; what it gives back is called when it goes. */
  readonly keep: (group: SVGGElement) => () => void
}

function Handle({ id, name, at, mmPerUnit, onMove, onLetGo, keep }: HandleProps) {
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
      transform={placedAt(at)}
      ref={keep}
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
