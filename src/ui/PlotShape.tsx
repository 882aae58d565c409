import { memo } from 'react'
import type { Lettering, Plot, Stroke } from '../drawing/plot.ts'
import { svgNumber, svgPath } from '../drawing/svgPath.ts'
import type { PlotMark } from '../papers/page.ts'

/** White round a lettering, in parts of its size. */
const HALO = 0.28

/** A part of a plot as it will be printed: cut off at the edges of its area. */
export function PlotShape({ mark }: { readonly mark: PlotMark }) {
  const { xMm, yMm, widthMm, heightMm, fromXMm, fromYMm, timesAcross, timesAlong } = mark
  return (
    <svg className="paper-plot" x={xMm} y={yMm} width={widthMm} height={heightMm} overflow="hidden">
      <g
        transform={`scale(${svgNumber(timesAcross, 6)} ${svgNumber(timesAlong, 6)}) translate(${svgNumber(-fromXMm)} ${svgNumber(-fromYMm)})`}
      >
        <Ink plot={mark.plot} />
      </g>
    </svg>
  )
}

const Ink = memo(function Ink({ plot }: { readonly plot: Plot }) {
  // The order of a plot is fixed, so a place in it is a key.
  return (
    <>
      {plot.strokes.map((stroke, i) => (
        <StrokeShape key={i} stroke={stroke} />
      ))}
      {plot.letterings.map((lettering, i) => (
        <LetteringShape key={i} lettering={lettering} />
      ))}
    </>
  )
})

function StrokeShape({ stroke: { commands, penMm, dashesMm, covers } }: { readonly stroke: Stroke }) {
  return (
    <path
      className={covers ? 'paper-line paper-covers' : 'paper-line'}
      d={svgPath(commands)}
      strokeWidth={svgNumber(penMm)}
      strokeLinejoin="round"
      {...(dashesMm.length === 0 ? {} : { strokeDasharray: dashesMm.map((part) => svgNumber(part)).join(' ') })}
    />
  )
}

function LetteringShape({ lettering: { text, at, sizeMm, heightMm, turnDeg } }: { readonly lettering: Lettering }) {
  const [x, y] = [svgNumber(at.x), svgNumber(at.y)]
  return (
    <text
      className="paper-text paper-figure paper-halo"
      x={x}
      y={svgNumber(at.y + heightMm / 2)}
      fontSize={svgNumber(sizeMm)}
      strokeWidth={svgNumber(sizeMm * HALO)}
      textAnchor="middle"
      {...(turnDeg === 0 ? {} : { transform: `rotate(${turnDeg} ${x} ${y})` })}
    >
      {text}
    </text>
  )
}
