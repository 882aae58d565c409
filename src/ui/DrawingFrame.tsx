import { lazy, Suspense, useLayoutEffect, useMemo, useRef, useState } from 'react'
import type { Figure } from '../core/figure.ts'
import type { Quantity } from '../core/quantity.ts'
import type { Drawing, NumberRef } from '../drawing/drawing.ts'
import { layDrawing } from '../drawing/layDrawing.ts'
import type { Laid } from '../drawing/sheet.ts'
import { svgNumber } from '../drawing/svgPath.ts'
import { DRAWING_FRAME_WORDS, type DrawingTold, enlargedWords, SEEN_FROM_WORDS, SHAPE_WORDS } from '../words/drawing.ts'
import { PAPER_PENS, SCREEN_PENS } from '../drawing/pens.ts'
import { DimensionMark, DrawingLabels, DrawingLines, EdgeLettering, isSame, type Tapping } from './drawingSvg.tsx'
import type { DrawingHands } from './DrawingHandles.tsx'
import { useMoveAndEnlarge } from './useMoveAndEnlarge.ts'
import './DrawingFrame.css'

/** Few drawings can be taken hold of: what that needs comes with the first. */
const DrawingHandles = lazy(async () => ({ default: (await import('./DrawingHandles.tsx')).DrawingHandles }))

interface Shown {
  readonly drawing: Drawing
  /** What it is called, and what it shows. */
  readonly told: DrawingTold
  /** A value as the shop reads it, without its unit where the sheet states it. */
  readonly formatValue: (value: Figure, quantity: Quantity) => string
}

/** How much larger heights are drawn, and the way to change it. */
export interface HeightsControl {
  readonly most: number
  readonly onChange: (times: number) => void
}

export interface ScreenDrawing extends Shown {
  readonly mode: 'screen'
  readonly lit?: NumberRef | null
  readonly tapping?: Tapping | null
  readonly heights?: HeightsControl | null
  /** What of it can be chosen and moved by hand. */
  readonly hands?: DrawingHands | null
  /** No higher than this on the screen; two thirds of the window where it is not said. */
  readonly mostHeightPx?: number
}
export interface PaperDrawing extends Shown {
  readonly mode: 'paper'
  readonly widthMm: number
  /** With the line under it; null: as high as it comes. */
  readonly heightMm: number | null
  readonly letteringMm?: number
}

const LETTERING_PX = 16
const LETTERING_MM = 2.8
const CAPTION_MM = 5
const FIRST_WIDTH_PX = 960

/** A drawing in its frame: on a screen it can be moved, enlarged and tapped; on paper it stands still, black on white. */
export function DrawingFrame(props: ScreenDrawing | PaperDrawing) {
  return props.mode === 'paper' ? <OnPaper {...props} /> : <OnScreen {...props} />
}

function OnPaper({ drawing, told, formatValue, widthMm, heightMm, letteringMm = LETTERING_MM }: PaperDrawing) {
  const svgHeightMm = heightMm === null ? null : Math.max(heightMm - CAPTION_MM, 10)
  const laid = useMemo(
    () =>
      layDrawing(drawing, {
        widthUnits: widthMm,
        heightUnits: svgHeightMm,
        figureUnits: letteringMm,
        formatValue,
        wordOf,
      }),
    [drawing, formatValue, widthMm, svgHeightMm, letteringMm],
  )
  const { name, description } = told
  const highMm = (laid.box.maxY - laid.box.minY) / laid.mmPerUnit
  return (
    <figure className="drawing drawing-paper">
      <svg
        xmlns="http://www.w3.org/2000/svg"
        className="drawing-svg"
        width={`${widthMm}mm`}
        height={`${svgNumber(highMm, 2)}mm`}
        viewBox={viewBoxOf(laid)}
        role="img"
        aria-label={`${name}. ${description}`}
      >
        <DrawingLines drawing={drawing} mmPerUnit={laid.mmPerUnit} pens={PAPER_PENS} />
        <DrawingLabels laid={laid} pens={PAPER_PENS} litStation={null} />
        {laid.dimensions.map((dimension, i) => (
          <DimensionMark
            key={i}
            dimension={dimension}
            mmPerUnit={laid.mmPerUnit}
            figureMm={laid.figureMm}
            pens={PAPER_PENS}
            lit={false}
            tapping={null}
          />
        ))}
        <EdgeLettering laid={laid} />
      </svg>
      <figcaption className="drawing-caption">
        {captionOf(drawing)}
        {` \u00b7 ${DRAWING_FRAME_WORDS.scale(String(svgNumber(laid.mmPerUnit, 2)))}`}
      </figcaption>
    </figure>
  )
}

function OnScreen({
  drawing,
  told,
  formatValue,
  lit,
  tapping = null,
  heights = null,
  hands = null,
  mostHeightPx,
}: ScreenDrawing) {
  const view = useRef<HTMLDivElement>(null)
  const content = useRef<SVGGElement>(null)
  const size = useSize(view, mostHeightPx)
  const { isMoved, enlarge, reduce, fit } = useMoveAndEnlarge(view, content)
  const laid = useMemo(() => layOnScreen(drawing, formatValue, size), [drawing, formatValue, size])
  const { name, description } = told
  const litStation =
    lit !== undefined && lit !== null && /^(?:rim|trebleRim|frets|braces)\[\]/u.test(lit.key) ? lit : null
  return (
    <figure className="drawing drawing-screen">
      <div
        ref={view}
        className="drawing-view"
        data-moved={isMoved}
        // It holds a drawing, no fields.
        // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
        role="group"
        aria-label={`${name}. ${DRAWING_FRAME_WORDS.moveHint}`}
        // The keys that move and enlarge it need it to hold the focus.
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
        tabIndex={0}
      >
        <svg
          className="drawing-svg"
          viewBox={viewBoxOf(laid)}
          {...(tapping === null && hands === null ? { role: 'img', 'aria-label': `${name}. ${description}` } : {})}
        >
          <g ref={content}>
            <g
              {...(tapping === null && hands === null ? {} : { role: 'img', 'aria-label': `${name}. ${description}` })}
            >
              <DrawingLines drawing={drawing} mmPerUnit={laid.mmPerUnit} pens={SCREEN_PENS} />
              <DrawingLabels laid={laid} pens={SCREEN_PENS} litStation={litStation} />
            </g>
            {laid.dimensions.map((dimension) => (
              <DimensionMark
                key={`${dimension.figured.key} ${dimension.figured.row ?? ''}`}
                dimension={dimension}
                mmPerUnit={laid.mmPerUnit}
                figureMm={laid.figureMm}
                pens={SCREEN_PENS}
                lit={isSame(lit, dimension.figured)}
                tapping={tapping}
              />
            ))}
            {hands !== null && (
              <Suspense fallback={null}>
                <DrawingHandles hands={hands} mmPerUnit={laid.mmPerUnit} />
              </Suspense>
            )}
          </g>
          <g aria-hidden="true">
            <EdgeLettering laid={laid} isMoved={isMoved} />
          </g>
        </svg>
      </div>
      <figcaption className="drawing-foot">
        <span className="drawing-caption">{captionOf(drawing)}</span>
        {heights !== null && (
          <Heights
            times={drawing.heightsTimes}
            stated={enlargedWords(drawing.name, drawing.heightsTimes)}
            heights={heights}
          />
        )}
        <span className="drawing-buttons">
          <button type="button" className="button" onClick={reduce} disabled={!isMoved}>
            {DRAWING_FRAME_WORDS.reduce}
          </button>
          <button type="button" className="button" onClick={enlarge}>
            {DRAWING_FRAME_WORDS.enlarge}
          </button>
          <button type="button" className="button" onClick={fit} disabled={!isMoved}>
            {DRAWING_FRAME_WORDS.fit}
          </button>
        </span>
      </figcaption>
    </figure>
  )
}

function Heights({
  times,
  stated,
  heights,
}: {
  readonly times: number
  readonly stated: string
  readonly heights: HeightsControl
}) {
  const set = (next: number) => heights.onChange(Math.min(Math.max(next, 1), heights.most))
  return (
    <span className="drawing-heights">
      <button type="button" className="button" disabled={times <= 1} onClick={() => set(times - 1)}>
        {DRAWING_FRAME_WORDS.heightsLess}
      </button>
      <input
        type="range"
        className="drawing-slider"
        min={1}
        max={heights.most}
        step={1}
        value={times}
        aria-label={DRAWING_FRAME_WORDS.heightsName}
        aria-valuetext={stated}
        onChange={(event) => set(event.target.valueAsNumber)}
      />
      <button type="button" className="button" disabled={times >= heights.most} onClick={() => set(times + 1)}>
        {DRAWING_FRAME_WORDS.heightsMore}
      </button>
    </span>
  )
}

const wordOf = (word: keyof typeof SHAPE_WORDS): string => SHAPE_WORDS[word]

const viewBoxOf = ({ box }: Laid): string =>
  [box.minX, box.minY, box.maxX - box.minX, box.maxY - box.minY].map((n) => svgNumber(n, 3)).join(' ')

/** From where it is seen, and how much larger heights are drawn. */
const captionOf = (drawing: Drawing): string =>
  `${SEEN_FROM_WORDS[drawing.seenFrom]}${drawing.heightsTimes === 1 ? '' : ` \u00b7 ${enlargedWords(drawing.name, drawing.heightsTimes)}`}`

interface Size {
  readonly widthPx: number
  readonly mostHeightPx: number
}

/** As wide as there is room, and no higher than allowed. */
function layOnScreen(drawing: Drawing, formatValue: Shown['formatValue'], { widthPx, mostHeightPx }: Size): Laid {
  const sheet = { widthUnits: widthPx, heightUnits: null, figureUnits: LETTERING_PX, formatValue, wordOf }
  const free = layDrawing(drawing, sheet)
  const highPx = (free.box.maxY - free.box.minY) / free.mmPerUnit
  return highPx <= mostHeightPx ? free : layDrawing(drawing, { ...sheet, heightUnits: mostHeightPx })
}

/** The width of an element, followed as it changes, and the height a drawing may take. */
function useSize(element: { readonly current: HTMLElement | null }, mostHeightPx: number | undefined): Size {
  const [size, setSize] = useState<Size>({ widthPx: FIRST_WIDTH_PX, mostHeightPx: mostHeightPx ?? 560 })
  useLayoutEffect(() => {
    const box = element.current
    if (box === null) return undefined
    const measure = () => {
      const widthPx = box.clientWidth || FIRST_WIDTH_PX
      const most = mostHeightPx ?? Math.max(window.innerHeight * 0.7, 320)
      setSize((old) => (old.widthPx === widthPx && old.mostHeightPx === most ? old : { widthPx, mostHeightPx: most }))
    }
    measure()
    if (typeof ResizeObserver === 'undefined') return undefined
    const observer = new ResizeObserver(measure)
    observer.observe(box)
    return () => observer.disconnect()
  }, [element, mostHeightPx])
  return size
}
