import {
  type BoxMark,
  type DrawingMark,
  type FigureMark,
  type Mark,
  MM_PER_PT,
  type Page,
  type SignMark,
  type TextMark,
} from '../papers/page.ts'
import { figureParts } from '../papers/textWidth.ts'
import { WARNING_SIGN } from '../papers/warningSign.ts'
import { DRAWING_WORDS } from '../words/drawings.ts'
import { SMALL_PENS } from '../drawing/pens.ts'
import { DimensionMark, DrawingLabels, DrawingLines, EdgeLettering } from './drawingSvg.tsx'
import { PlotShape } from './PlotShape.tsx'
import './DrawingFrame.css'
import './paperPages.css'

/** Pages of a paper, on screen as sheets at their true aspect, in print each exactly one sheet. */
export function PaperPages({
  pages,
  label,
}: {
  readonly pages: readonly Page[]
  /** What a page is called by one who cannot see it. */
  readonly label: (page: Page) => string
}) {
  return (
    <div className="paper-pages">
      {pages.map((page) => (
        <section
          className="paper-page"
          key={page.number}
          data-size={page.widthMm > page.heightMm ? `${page.size}-lying` : page.size}
          aria-label={label(page)}
        >
          <svg
            className="paper-page-sheet"
            viewBox={`0 0 ${page.widthMm} ${page.heightMm}`}
            style={{ aspectRatio: `${page.widthMm} / ${page.heightMm}` }}
          >
            {page.blocks.map((block, i) => (
              <g key={i} data-block={block.kind}>
                {block.marks.map((mark, n) => (
                  <MarkShape key={n} mark={mark} />
                ))}
              </g>
            ))}
          </svg>
        </section>
      ))}
    </div>
  )
}

function MarkShape({ mark }: { readonly mark: Mark }) {
  switch (mark.kind) {
    case 'text':
      return <Lettering mark={mark} />
    case 'figure':
      return <FigureShape mark={mark} />
    case 'rule':
      return (
        <line
          className="paper-line"
          x1={mark.fromXMm}
          y1={mark.fromYMm}
          x2={mark.toXMm}
          y2={mark.toYMm}
          strokeWidth={mark.penMm}
        />
      )
    case 'box':
      return <BoxShape mark={mark} />
    case 'sign':
      return <SignShape mark={mark} />
    case 'drawing':
      return <DrawingShape mark={mark} />
    case 'plot':
      return <PlotShape mark={mark} />
  }
}

function DrawingShape({ mark: { drawing, laid, xMm, yMm, widthMm, heightMm } }: { readonly mark: DrawingMark }) {
  const { box, mmPerUnit, figureMm } = laid
  const { name, description } = DRAWING_WORDS[drawing.name]
  return (
    <svg
      className="drawing-svg"
      x={xMm}
      y={yMm}
      width={widthMm}
      height={heightMm}
      viewBox={`${box.minX} ${box.minY} ${box.maxX - box.minX} ${box.maxY - box.minY}`}
      role="img"
      aria-label={`${name}. ${description}`}
    >
      <DrawingLines drawing={drawing} mmPerUnit={mmPerUnit} pens={SMALL_PENS} />
      <DrawingLabels laid={laid} pens={SMALL_PENS} litStation={null} />
      {laid.dimensions.map((dimension, i) => (
        <DimensionMark
          key={i}
          dimension={dimension}
          mmPerUnit={mmPerUnit}
          figureMm={figureMm}
          pens={SMALL_PENS}
          lit={false}
          tapping={null}
        />
      ))}
      <EdgeLettering laid={laid} />
    </svg>
  )
}

function Lettering({ mark }: { readonly mark: TextMark }) {
  return (
    <text
      className="paper-text"
      x={mark.xMm}
      y={mark.yMm}
      fontSize={mark.sizePt * MM_PER_PT}
      fontWeight={mark.weight === 'strong' ? 600 : 400}
      textAnchor={mark.anchor}
    >
      {mark.text}
    </text>
  )
}

function FigureShape({ mark }: { readonly mark: FigureMark }) {
  const sizeMm = mark.sizePt * MM_PER_PT
  const parts = figureParts(mark.figure, mark.word, mark.sizePt)
  return (
    <text
      className="paper-text paper-figure"
      x={mark.xMm}
      y={mark.yMm}
      fontSize={sizeMm}
      fontWeight={mark.weight === 'strong' ? 600 : 400}
      textAnchor={mark.anchor}
    >
      {parts.map((part, i) => (
        <tspan key={i} dy={((parts[i - 1]?.raise ?? 0) - part.raise) * sizeMm} fontSize={part.scale * sizeMm}>
          {part.text}
        </tspan>
      ))}
    </text>
  )
}

function BoxShape({ mark }: { readonly mark: BoxMark }) {
  return (
    <rect
      className="paper-line"
      x={mark.xMm}
      y={mark.yMm}
      width={mark.widthMm}
      height={mark.heightMm}
      strokeWidth={mark.penMm}
      data-purpose={mark.purpose}
    />
  )
}

/** A triangle with a bang: drawn, since the lettering may not have it. */
function SignShape({ mark: { xMm, yMm, sizeMm } }: { readonly mark: SignMark }) {
  const { triangle, penMm, bar, dot } = WARNING_SIGN
  const x = (part: number) => xMm + part * sizeMm
  const y = (part: number) => yMm + part * sizeMm
  return (
    <g className="paper-sign">
      <polygon
        className="paper-line"
        points={triangle.map((corner) => `${x(corner.x)},${y(corner.y)}`).join(' ')}
        strokeWidth={penMm}
      />
      <line
        className="paper-line"
        x1={x(bar.x)}
        y1={y(bar.fromY)}
        x2={x(bar.x)}
        y2={y(bar.toY)}
        strokeWidth={bar.pen * sizeMm}
      />
      <circle className="paper-ink" cx={x(dot.x)} cy={y(dot.y)} r={dot.radius * sizeMm} />
    </g>
  )
}
