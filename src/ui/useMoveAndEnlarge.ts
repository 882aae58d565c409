import { type RefObject, useCallback, useEffect, useRef, useState } from 'react'

/** Where a sheet is looked at: enlarged so many times, moved by so much of its own width. */
interface Look {
  readonly times: number
  readonly x: number
  readonly y: number
}
const FITTED: Look = { times: 1, x: 0, y: 0 }
const MOST_TIMES = 24
const STEP = 1.4
const MOVE_STEP_PX = 60
const DRAG_PX = 6
const DOUBLE_TAP_MS = 320
const DOUBLE_TAP_PX = 28

export interface MoveAndEnlarge {
  /** Whether it is shown otherwise than fitted. */
  readonly isMoved: boolean
  readonly enlarge: () => void
  readonly reduce: () => void
  readonly fit: () => void
}

/**
 * Moving and enlarging what stands in an SVG, by finger, mouse, wheel and keys. Only the transform of one group and one custom property
 * are set, never a render: `frame` takes the events, `content` is the group, both within the same svg.
 */
export function useMoveAndEnlarge(
  frame: RefObject<HTMLElement | null>,
  content: RefObject<SVGGElement | null>,
): MoveAndEnlarge {
  const look = useRef<Look>(FITTED)
  const [isMoved, setMoved] = useState(false)

  const show = useCallback(
    (next: Look) => {
      const svg = content.current?.ownerSVGElement
      if (content.current === null || svg === undefined || svg === null) return
      const times = Math.min(Math.max(next.times, 1), MOST_TIMES)
      // At its own size the sheet stands where it stands; enlarged, it cannot be pushed out of sight.
      const slack = times < 1.001 ? 0 : 0.5
      const { width, height, x: minX, y: minY } = svg.viewBox.baseVal
      const held = (shift: number, min: number, size: number) => {
        const atStart = min - times * min
        return Math.min(Math.max(shift, atStart - (times - 1 + slack) * size), atStart + slack * size)
      }
      const x = held(next.x, minX, width)
      const y = held(next.y, minY, height)
      look.current = times < 1.001 ? FITTED : { times, x, y }
      const { times: t, x: tx, y: ty } = look.current
      content.current.setAttribute('transform', `matrix(${t} 0 0 ${t} ${tx} ${ty})`)
      content.current.style.setProperty('--steady', String(1 / t))
      setMoved(t > 1)
    },
    [content],
  )

  /** Millimetres of the sheet at a place of the screen, and how many there are to a pixel. */
  const onSheet = useCallback(
    (clientX: number, clientY: number) => {
      const svg = content.current?.ownerSVGElement
      const matrix = svg?.getScreenCTM()
      if (!matrix) return null
      return { x: (clientX - matrix.e) / matrix.a, y: (clientY - matrix.f) / matrix.d, perPx: 1 / matrix.a }
    },
    [content],
  )

  const enlargeAt = useCallback(
    (by: number, clientX: number, clientY: number) => {
      const at = onSheet(clientX, clientY)
      if (at === null) return
      const { times, x, y } = look.current
      const next = Math.min(Math.max(times * by, 1), MOST_TIMES)
      const ratio = next / times
      show({ times: next, x: at.x - ratio * (at.x - x), y: at.y - ratio * (at.y - y) })
    },
    [onSheet, show],
  )

  const enlargeMiddle = useCallback(
    (by: number) => {
      const box = frame.current?.getBoundingClientRect()
      if (box) enlargeAt(by, box.left + box.width / 2, box.top + box.height / 2)
    },
    [enlargeAt, frame],
  )

  useEffect(() => {
    const element = frame.current
    if (element === null) return undefined
    const fingers = new Map<number, { x: number; y: number }>()
    let dragged = false
    let pressedAt = { x: 0, y: 0 }
    let lastTap = { at: 0, x: 0, y: 0 }
    const moveBy = (dx: number, dy: number) => {
      const perPx = onSheet(0, 0)?.perPx ?? 1
      const { times, x, y } = look.current
      show({ times, x: x + dx * perPx, y: y + dy * perPx })
    }
    const onDown = (event: PointerEvent) => {
      if (event.pointerType === 'mouse' && event.button !== 0) return
      // A handle is moved, not the drawing under it.
      if (isOnHandle(event)) return
      fingers.set(event.pointerId, { x: event.clientX, y: event.clientY })
      if (fingers.size === 1) {
        dragged = false
        pressedAt = { x: event.clientX, y: event.clientY }
      }
    }
    const onMove = (event: PointerEvent) => {
      const before = fingers.get(event.pointerId)
      if (before === undefined) return
      const now = { x: event.clientX, y: event.clientY }
      if (fingers.size === 2) {
        const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1] ?? before
        const was = Math.hypot(before.x - other.x, before.y - other.y)
        const is = Math.hypot(now.x - other.x, now.y - other.y)
        moveBy((now.x - before.x) / 2, (now.y - before.y) / 2)
        if (was > 8 && is > 8) enlargeAt(is / was, (now.x + other.x) / 2, (now.y + other.y) / 2)
        dragged = true
      } else if (look.current.times > 1) {
        if (!dragged && Math.hypot(now.x - pressedAt.x, now.y - pressedAt.y) < DRAG_PX) return
        if (!dragged) element.setPointerCapture(event.pointerId)
        dragged = true
        moveBy(now.x - before.x, now.y - before.y)
      }
      fingers.set(event.pointerId, now)
    }
    const onUp = (event: PointerEvent) => {
      if (!fingers.delete(event.pointerId) || event.type === 'pointercancel' || dragged) return
      const isSecond =
        event.timeStamp - lastTap.at < DOUBLE_TAP_MS &&
        Math.hypot(event.clientX - lastTap.x, event.clientY - lastTap.y) < DOUBLE_TAP_PX
      if (isSecond && look.current.times > 1) show(FITTED)
      else if (isSecond) enlargeAt(2.5, event.clientX, event.clientY)
      lastTap = isSecond ? { at: 0, x: 0, y: 0 } : { at: event.timeStamp, x: event.clientX, y: event.clientY }
    }
    // What was a drag is no tap on a figure.
    const onClick = (event: MouseEvent) => {
      if (!dragged) return
      event.stopPropagation()
      dragged = false
    }
    // Turning the wheel goes on scrolling the page until the drawing is in hand: focused, or with the control key.
    const onWheel = (event: WheelEvent) => {
      const inHand = event.ctrlKey || event.metaKey || element.contains(document.activeElement)
      if (!inHand || (event.deltaY > 0 && look.current.times === 1)) return
      event.preventDefault()
      enlargeAt(Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.05 : 0.0022)), event.clientX, event.clientY)
    }
    // Two fingers are for the drawing, and a finger on a handle for that, not for the page.
    const onTouch = (event: TouchEvent) => {
      if ((event.touches.length > 1 || isOnHandle(event)) && event.cancelable) event.preventDefault()
    }
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return
      const act = KEYS[event.key]
      if (act === undefined) return
      if (act.kind === 'move' && look.current.times === 1) return
      event.preventDefault()
      if (act.kind === 'fit') show(FITTED)
      else if (act.kind === 'move') moveBy(act.x, act.y)
      else enlargeMiddle(act.by)
    }
    element.addEventListener('pointerdown', onDown)
    element.addEventListener('pointermove', onMove)
    element.addEventListener('pointerup', onUp)
    element.addEventListener('pointercancel', onUp)
    element.addEventListener('click', onClick, { capture: true })
    element.addEventListener('wheel', onWheel, { passive: false })
    element.addEventListener('touchstart', onTouch, { passive: false })
    element.addEventListener('touchmove', onTouch, { passive: false })
    element.addEventListener('keydown', onKey)
    return () => {
      element.removeEventListener('pointerdown', onDown)
      element.removeEventListener('pointermove', onMove)
      element.removeEventListener('pointerup', onUp)
      element.removeEventListener('pointercancel', onUp)
      element.removeEventListener('click', onClick, { capture: true })
      element.removeEventListener('wheel', onWheel)
      element.removeEventListener('touchstart', onTouch)
      element.removeEventListener('touchmove', onTouch)
      element.removeEventListener('keydown', onKey)
    }
  }, [enlargeAt, enlargeMiddle, frame, onSheet, show])

  return {
    isMoved,
    enlarge: useCallback(() => enlargeMiddle(STEP), [enlargeMiddle]),
    reduce: useCallback(() => enlargeMiddle(1 / STEP), [enlargeMiddle]),
    fit: useCallback(() => show(FITTED), [show]),
  }
}

const isOnHandle = ({ target }: Event): boolean => target instanceof Element && target.closest('[data-hand]') !== null

type KeyAct = { kind: 'fit' } | { kind: 'enlarge'; by: number } | { kind: 'move'; x: number; y: number }
const KEYS: Readonly<Record<string, KeyAct>> = {
  '+': { kind: 'enlarge', by: STEP },
  '=': { kind: 'enlarge', by: STEP },
  '-': { kind: 'enlarge', by: 1 / STEP },
  '0': { kind: 'fit' },
  ArrowLeft: { kind: 'move', x: MOVE_STEP_PX, y: 0 },
  ArrowRight: { kind: 'move', x: -MOVE_STEP_PX, y: 0 },
  ArrowUp: { kind: 'move', x: 0, y: MOVE_STEP_PX },
  ArrowDown: { kind: 'move', x: 0, y: -MOVE_STEP_PX },
}
