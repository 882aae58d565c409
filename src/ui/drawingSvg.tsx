import { type KeyboardEvent, memo } from 'react'
import type { Drawing, NumberRef, PathShape } from '../drawing/drawing.ts'
import { dashesOf, type Pens, penOf } from '../drawing/pens.ts'
import { TICK_LINES, tickTurnDeg } from '../drawing/tick.ts'
import { boxOf, type Laid, type LaidDimension, type LaidStation, type LaidText, type Tick } from '../drawing/sheet.ts'
import { svgNumber, svgPath } from '../drawing/svgPath.ts'

/** The lines of a drawing; they are made once for each drawing, whatever is lit, moved or enlarged. */
export const DrawingLines = memo(function DrawingLines({
  drawing,
  mmPerUnit,
  pens,
}: {
  readonly drawing: Drawing
  readonly mmPerUnit: number
  readonly pens: Pens
}) {
  return drawing.shapes.map((shape, i) =>
    // The order of a drawing's shapes is fixed, so their place is their key.
    shape.kind === 'path' ? <Line key={i} shape={shape} mmPerUnit={mmPerUnit} pens={pens} /> : null,
  )
})

function Line({
  shape,
  mmPerUnit,
  pens,
}: {
  readonly shape: PathShape
  readonly mmPerUnit: number
  readonly pens: Pens
}) {
  const d = svgPath(shape.commands)
  if (shape.solidMm !== undefined)
    return <path className="line-solid" d={d} fill="none" stroke="currentColor" strokeWidth={shape.solidMm} />
  const dashes = dashesOf(shape.role, pens)
  return (
    <path
      className={`line line-${shape.role}${shape.covers === true ? ' line-covers' : ''}`}
      d={d}
      fill={shape.covers === true ? '#fff' : 'none'}
      stroke="currentColor"
      strokeWidth={round(penOf(shape.role, pens) * mmPerUnit)}
      strokeLinejoin="round"
      {...(dashes.length === 0 ? {} : { strokeDasharray: dashes.map((part) => round(part * mmPerUnit)).join(' ') })}
    />
  )
}

const round = (value: number) => svgNumber(value)

/** A text that keeps its size on the sheet: its pivot goes with the drawing, the rest does not grow. */
function Lettering({
  text,
  figureMm,
  kind,
}: {
  readonly text: LaidText
  readonly figureMm: number
  readonly kind: string
}) {
  const x = round(text.offset.x)
  const y = round(text.offset.y)
  return (
    <g transform={`translate(${round(text.pivot.x)} ${round(text.pivot.y)})`}>
      <g className="steady">
        <text
          className={`lettering lettering-${kind}`}
          x={x}
          y={round(y + text.heightMm / 2)}
          fontSize={round(figureMm)}
          strokeWidth={round(figureMm * 0.28)}
          textAnchor="middle"
          fill="currentColor"
          stroke="#fff"
          strokeLinejoin="round"
          paintOrder="stroke"
          {...(text.turnDeg === 0 ? {} : { transform: `rotate(${text.turnDeg} ${x} ${y})` })}
        >
          {text.text}
        </text>
      </g>
    </g>
  )
}

/** Words, stations and their numbers. */
export const DrawingLabels = memo(function DrawingLabels({
  laid,
  pens,
  litStation,
}: {
  readonly laid: Laid
  readonly pens: Pens
  readonly litStation: NumberRef | null
}) {
  return (
    <>
      {laid.stations.map((station) => (
        <StationMark
          key={`${station.list} ${station.row}`}
          station={station}
          laid={laid}
          pens={pens}
          lit={litStation !== null && litStation.key.startsWith(`${station.list}[].`) && station.row === litStation.row}
        />
      ))}
      {laid.labels.map((text, i) => (
        // A word that has moved is the same word: it is not taken out and put in again.
        <Lettering key={i} text={text} figureMm={laid.figureMm} kind="word" />
      ))}
    </>
  )
})

function StationMark({
  station,
  laid,
  pens,
  lit,
}: {
  readonly station: LaidStation
  readonly laid: Laid
  readonly pens: Pens
  readonly lit: boolean
}) {
  return (
    <g className={lit ? 'station lit' : 'station'}>
      <path
        className="line line-dimension"
        d={svgPath(station.lines)}
        fill="none"
        stroke="currentColor"
        strokeWidth={round(pens.narrow * laid.mmPerUnit)}
      />
      {station.number !== null && <Lettering text={station.number} figureMm={laid.figureMm} kind="station" />}
    </g>
  )
}

/** What a tap on a figure tells. */
export interface Tapping {
  readonly onTap: (ref: NumberRef) => void
  readonly nameOf: (ref: NumberRef) => string
}

export const isSame = (a: NumberRef | null | undefined, b: NumberRef): boolean =>
  a !== null && a !== undefined && a.key === b.key && (a.row ?? null) === (b.row ?? null)

/** What ends a dimension line, in figure heights: an oblique stroke, the circle of an origin, or an arrow away from it. */
function TickMark({
  tick,
  figureMm,
  penMm,
}: {
  readonly tick: Tick
  readonly figureMm: number
  readonly penMm: number
}) {
  const { at, mark } = tick
  const turn = round(tickTurnDeg(tick))
  const pen = {
    className: 'line line-tick',
    fill: 'none',
    stroke: 'currentColor',
    strokeWidth: round(penMm / figureMm),
  }
  return (
    <g transform={`translate(${round(at.x)} ${round(at.y)}) rotate(${turn}) scale(${round(figureMm)})`}>
      <g className="steady">
        <path d={svgPath(TICK_LINES[mark])} {...pen} />
      </g>
    </g>
  )
}

export const DimensionMark = memo(function DimensionMark({
  dimension,
  mmPerUnit,
  figureMm,
  pens,
  lit,
  tapping,
}: {
  readonly dimension: LaidDimension
  readonly mmPerUnit: number
  readonly figureMm: number
  readonly pens: Pens
  readonly lit: boolean
  readonly tapping: Tapping | null
}) {
  const { figure, figured } = dimension
  const body = (
    <>
      {dimension.lines.length > 0 && (
        <path
          className="line line-dimension"
          d={svgPath(dimension.lines)}
          fill="none"
          stroke="currentColor"
          strokeWidth={round(pens.narrow * mmPerUnit)}
        />
      )}
      {dimension.ticks.map((tick, i) => (
        <TickMark key={i} tick={tick} figureMm={figureMm} penMm={pens.wide * 0.8 * mmPerUnit} />
      ))}
      <Lettering text={figure} figureMm={figureMm} kind="figure" />
    </>
  )
  if (tapping === null) return <g className={lit ? 'dimension lit' : 'dimension'}>{body}</g>
  const tap = () => tapping.onTap({ key: figured.key, row: figured.row })
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return
    event.preventDefault()
    event.stopPropagation()
    tap()
  }
  return (
    <g
      className={lit ? 'dimension tappable lit' : 'dimension tappable'}
      // A group of an SVG has no tag of its own for it.
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
      role="button"
      tabIndex={0}
      aria-pressed={lit}
      aria-label={`${tapping.nameOf(figured)}: ${figure.text}`}
      onClick={tap}
      onKeyDown={onKeyDown}
    >
      {body}
      <HitArea figure={figure} leastMm={TARGET_PX * mmPerUnit} />
    </g>
  )
})

/** Half the way to the next dimension line on either side: figures stand two of their sizes apart. */
const TARGET_PX = 30
function HitArea({ figure, leastMm }: { readonly figure: LaidText; readonly leastMm: number }) {
  const box = boxOf({ ...figure, pivot: { x: 0, y: 0 } })
  const width = Math.max(box.maxX - box.minX, leastMm)
  const height = Math.max(box.maxY - box.minY, leastMm)
  return (
    <g transform={`translate(${round(figure.pivot.x)} ${round(figure.pivot.y)})`}>
      <rect
        className="steady hit"
        x={round(figure.offset.x - width / 2)}
        y={round(figure.offset.y - height / 2)}
        width={round(width)}
        height={round(height)}
        fill="none"
        pointerEvents="all"
      />
    </g>
  )
}

/** BASS, TREBLE, TAIL and NECK: beside a drawing seen whole, at the edges of the sheet while it is moved. */
export const EdgeLettering = memo(function EdgeLettering({
  laid,
  isMoved = false,
}: {
  readonly laid: Laid
  readonly isMoved?: boolean
}) {
  return (isMoved ? laid.marksWhileMoved : laid.marks).map((text) => (
    <Lettering key={text.text} text={text} figureMm={laid.figureMm * 0.9} kind="mark" />
  ))
})
