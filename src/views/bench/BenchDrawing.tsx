import { useLayoutEffect, useMemo, useRef, useState } from 'react'
import type { Computed } from '../../core/compute.ts'
import type { Plan } from '../../core/plan.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import type { Drawing, NumberRef } from '../../drawing/drawing.ts'
import { stageDrawing } from '../../papers/stageDrawing.ts'
import type { StageDrawing } from '../../record/patterns/stages.ts'
import { DrawingFrame } from '../../ui/DrawingFrame.tsx'
import { DRAWING_WORDS } from '../../words/drawings.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { drawingFigure } from '../sheets/drawingFigure.ts'

/** What stands under a drawing in its frame, px: where it is seen from, and the keys that enlarge it. */
const FOOT_PX = 84
const LEAST_PX = 160

interface Props {
  readonly names: readonly StageDrawing[]
  readonly computed: Computed
  readonly plan: Plan
  readonly units: ShopUnits
  readonly lit: NumberRef
  readonly onTap: (ref: NumberRef) => void
  readonly nameOf: (ref: NumberRef) => string
}

/** The stage's drawing with its numbers on it; of several the one that shows the number in hand, until another is chosen. */
export function BenchDrawing({ names, computed, plan, units, lit, onTap, nameOf }: Props) {
  const drawings = useMemo(() => names.map((name) => stageDrawing(computed, plan, name)), [names, computed, plan])
  const [chosen, choose] = useState<number | null>(null)
  const [litAtChoice, setLitAtChoice] = useState(lit.key)
  if (litAtChoice !== lit.key) {
    setLitAtChoice(lit.key)
    choose(null)
  }
  const formatValue = useMemo(() => drawingFigure(units, FIGURE_WORDS), [units])
  const tapping = useMemo(() => ({ onTap, nameOf }), [onTap, nameOf])
  const room = useRef<HTMLDivElement>(null)
  const heightPx = useHeight(room)
  const showing = drawings.map((drawing) => showsHowWell(drawing, lit))
  const at = chosen !== null && chosen < drawings.length ? chosen : showing.indexOf(Math.max(...showing))
  const drawing = drawings[at]
  if (drawing === undefined) return null
  return (
    <div className="bench-drawing">
      {drawings.length > 1 && (
        <div className="bench-drawing-names">
          {drawings.map(({ name }, i) => (
            <button type="button" key={name} aria-pressed={i === at} onClick={() => choose(i)}>
              {DRAWING_WORDS[name].name}
            </button>
          ))}
        </div>
      )}
      <div className="bench-drawing-room" ref={room}>
        <DrawingFrame
          mode="screen"
          drawing={drawing}
          told={DRAWING_WORDS[drawing.name]}
          formatValue={formatValue}
          lit={lit}
          tapping={tapping}
          mostHeightPx={Math.max(heightPx - FOOT_PX, LEAST_PX)}
        />
      </div>
    </div>
  )
}

/** 3: with the figure in hand; 2: with others of its column; 1: with the place it stands at; 0: not at all. */
function showsHowWell({ shapes }: Drawing, { key, row }: NumberRef): number {
  let best = 0
  for (const shape of shapes) {
    if ('figured' in shape && shape.figured.key === key)
      best = Math.max(best, (shape.figured.row ?? null) === (row ?? null) ? 3 : 2)
    if (shape.kind === 'station' && key.startsWith(`${shape.list}[].`) && shape.row === row) best = Math.max(best, 1)
  }
  return best
}

/** How high the room for the drawing is, followed as it changes. */
function useHeight(element: { readonly current: HTMLElement | null }): number {
  const [height, setHeight] = useState(480)
  useLayoutEffect(() => {
    const box = element.current
    if (box === null) return undefined
    const measure = (): void => setHeight(box.clientHeight || 480)
    measure()
    if (typeof ResizeObserver === 'undefined') return undefined
    const observer = new ResizeObserver(measure)
    observer.observe(box)
    return () => observer.disconnect()
  }, [element])
  return height
}
