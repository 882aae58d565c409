import type { Point } from '../core/geometry/point.ts'
import { around, boundsOf, heightOf, widthOf } from './bounds.ts'
import type {
  AngleDimension,
  Bounds,
  Drawing,
  Figured,
  Label,
  Linear,
  Ordinate,
  PathCommand,
  RadiusDimension,
  Station,
} from './drawing.ts'
import { layInPlace, layLanes } from './layLanes.ts'
import { arcAbout } from './line.ts'
import { cornerMarks, edgeMarks, isFree, leftAndRight, MARGIN } from './edgeMarks.ts'
import { boxOf, type Laid, type LaidDimension, type LaidStation, type LaidText, type Sheet, textAway } from './sheet.ts'

/** Scales tried, each a step smaller than the one before: the last leaves the drawing a quarter of the sheet, however many figures stand round it. */
const TRIES = 24
const STEP = 1.06
const ROUNDS = 3
/** In parts of the figures' size. */
const MARK_ROOM = 2
const AIR = 0.25

/**
 * A drawing laid on a sheet as large as it and its figures fit. Figures and their distances keep their size on the sheet, so the scale that
 * fits is looked for from the largest downward, then drawn closer, by fixed counts. Figures of stations give way where they would meet another.
 */
export function layDrawing(drawing: Drawing, sheet: Sheet): Laid {
  const { widthUnits, heightUnits } = sheet
  const w = widthOf(drawing.bounds)
  const h = heightOf(drawing.bounds)
  const fits = ({ box, mmPerUnit }: Laid) =>
    widthOf(box) <= widthUnits * mmPerUnit * 1.0001 &&
    (heightUnits === null || heightOf(box) <= heightUnits * mmPerUnit * 1.0001)
  /** The scale that fits if everything round the drawing stays where it is. */
  const closest = ({ box, mmPerUnit }: Laid) => {
    const along = (sizeMm: number, boxMm: number, units: number) =>
      sizeMm / Math.max(units - (boxMm - sizeMm) / mmPerUnit, units / 4)
    return Math.max(along(w, widthOf(box), widthUnits), heightUnits === null ? 0 : along(h, heightOf(box), heightUnits))
  }
  const textOf = textsOf(sheet)
  const largest = Math.max(w / widthUnits, heightUnits === null ? 0 : h / heightUnits)
  const at = (step: number) => layAt(drawing, sheet, textOf, largest * STEP ** step)
  let laid = at(0)
  if (!fits(laid)) {
    // The first step that fits is looked for from where it would be if no figure made way.
    const guess = Math.ceil(Math.log(closest(laid) / largest) / Math.log(STEP))
    let step = Math.min(Math.max(guess, 1), TRIES)
    laid = at(step)
    if (fits(laid)) {
      for (let larger = laid; fits(larger); larger = at(--step)) {
        laid = larger
        if (step === 1) break
      }
    } else while (step < TRIES && !fits(laid)) laid = at(++step)
  }
  for (let i = 0; i < ROUNDS; i++) {
    const scale = closest(laid)
    if (scale >= laid.mmPerUnit) break
    const closer = layAt(drawing, sheet, textOf, scale)
    if (!fits(closer)) break
    laid = closer
  }
  const { mmPerUnit, box } = laid
  return withMarks(
    drawing,
    sheet,
    laid,
    centred(box, widthUnits * mmPerUnit, heightUnits === null ? null : heightUnits * mmPerUnit),
  )
}

/** A drawing laid at a given scale, its sheet as large as drawing and figures come. 1 with a sheet in mm is full size. */
export function layAtScale(drawing: Drawing, sheet: Sheet, mmPerUnit: number): Laid {
  const laid = layAt(drawing, sheet, textsOf(sheet), mmPerUnit)
  return withMarks(drawing, sheet, laid, laid.box)
}

/** With what lies at each edge, on a sheet that shows `whole`. */
function withMarks(drawing: Drawing, sheet: Sheet, laid: Laid, whole: Bounds): Laid {
  const { box, figureMm } = laid
  const { marks, bounds } = drawing
  const { inCorners, ...atEdges } = marks
  return {
    ...laid,
    box: whole,
    marks: [
      ...laid.marks,
      ...edgeMarks(inCorners === true ? leftAndRight(marks) : atEdges, bounds, box, sheet, figureMm),
    ],
    marksWhileMoved: edgeMarks(atEdges, whole, whole, sheet, figureMm),
  }
}

/** A box of at least this size about the same middle. */
function centred(box: Bounds, widthMm: number, heightMm: number | null): Bounds {
  const moreX = Math.max(widthMm - widthOf(box), 0) / 2
  const moreY = heightMm === null ? 0 : Math.max(heightMm - heightOf(box), 0) / 2
  return { minX: box.minX - moreX, minY: box.minY - moreY, maxX: box.maxX + moreX, maxY: box.maxY + moreY }
}

type TextOf = (shape: { readonly figured: Figured }) => string

/** What each figure reads, put into words once however often it is laid. */
function textsOf({ formatValue }: Sheet): TextOf {
  const known = new Map<Figured, string>()
  return ({ figured }) => {
    const before = known.get(figured)
    if (before !== undefined) return before
    const { sign, value, quantity, isUnsigned } = figured
    // Where its place says on which side it lies, neither a minus nor the side's name is set with it.
    const shown = isUnsigned === true && typeof value === 'number' ? Math.abs(value) : value
    const read = isUnsigned === true && quantity === 'across' ? 'bodyLength' : quantity
    const text = `${sign === undefined ? '' : `${sign}\u2009`}${formatValue(shown, read)}`
    known.set(figured, text)
    return text
  }
}

function layAt(drawing: Drawing, sheet: Sheet, textOf: TextOf, mmPerUnit: number): Laid {
  const figureMm = sheet.figureUnits * mmPerUnit
  const lanes: Linear[] = []
  const dimensions: LaidDimension[] = []
  const labels: LaidText[] = []
  for (const shape of drawing.shapes) {
    if (shape.kind === 'linear') {
      if (shape.line.way === 'inPlace') dimensions.push(layInPlace(shape, figureMm, textOf(shape)))
      else lanes.push(shape)
    } else if (shape.kind === 'radius') dimensions.push(layRadius(shape, figureMm, textOf(shape)))
    else if (shape.kind === 'angle') dimensions.push(layAngle(shape, figureMm, textOf(shape)))
  }
  dimensions.push(...layLanes(lanes, figureMm, textOf))

  const taken = [
    ...dimensions.map(({ figure }) => boxOf(figure, AIR * figureMm)),
    ...dimensions.flatMap(({ lines }) => lineBoxes(lines)),
  ]
  const marks = drawing.marks.inCorners === true ? cornerMarks(drawing, sheet, figureMm, taken) : []
  taken.push(...marks.map((mark) => boxOf(mark, AIR * figureMm)))
  const stations: LaidStation[] = []
  const layOrdinate = (shape: Ordinate) => {
    const figure = textAway(textOf(shape), figureMm, shape.at, shape.away, shape.turned ? -90 : 0)
    if (shape.urgency > 0 && !isFree(figure, taken)) return
    taken.push(boxOf(figure, AIR * figureMm))
    dimensions.push({ figured: shape.figured, lines: [], ticks: [], figure })
  }
  const layStation = (shape: Station) => {
    const number = textAway(String(shape.number ?? shape.row), figureMm, shape.numberAt, shape.away)
    const isShown = shape.urgency < 9 && isFree(number, taken)
    if (isShown) taken.push(boxOf(number, AIR * figureMm))
    const lines = shape.ticks.flatMap(({ from, to }): PathCommand[] => [
      ['M', from.x, from.y],
      ['L', to.x, to.y],
    ])
    stations.push({ list: shape.list, row: shape.row, lines, number: isShown ? number : null })
  }
  const urgent = drawing.shapes
    .filter((shape) => shape.kind === 'station' || shape.kind === 'ordinate')
    .toSorted((a, b) => a.urgency - b.urgency)
  for (const shape of urgent) if (shape.kind === 'ordinate' && shape.urgency === 0) layOrdinate(shape)
  const words = drawing.shapes
    .filter((shape) => shape.kind === 'label')
    .toSorted((a, b) => Number(a.isOptional) - Number(b.isOptional))
  for (const shape of words) {
    const text = placeLabel(shape, sheet.wordOf(shape.word), figureMm, taken)
    if (text === null) continue
    taken.push(boxOf(text, AIR * figureMm))
    labels.push(text)
  }
  for (const shape of urgent) {
    if (shape.kind === 'station') layStation(shape)
    else if (shape.urgency > 0) layOrdinate(shape)
  }

  const texts = [
    ...marks,
    ...dimensions.map(({ figure }) => figure),
    ...labels,
    ...stations.flatMap(({ number }) => number ?? []),
  ]
  const ends = dimensions.flatMap(({ lines }) =>
    lines.flatMap((command) =>
      command[0] === 'Z' ? [] : [{ x: command.at(-2) as number, y: command.at(-1) as number }],
    ),
  )
  const covered = [...texts.map((text) => boxOf(text)), ...(ends.length > 0 ? [boundsOf(ends)] : [])].reduce(
    around,
    drawing.bounds,
  )
  const room = (mark: 'top' | 'bottom' | 'left' | 'right') => {
    const isInside = drawing.marks.inCorners === true && (mark === 'top' || mark === 'bottom')
    return (MARGIN + (drawing.marks[mark] === undefined || isInside ? 0 : MARK_ROOM)) * figureMm
  }
  const box = {
    minX: covered.minX - room('left'),
    minY: covered.minY - room('top'),
    maxX: covered.maxX + room('right'),
    maxY: covered.maxY + room('bottom'),
  }
  return { mmPerUnit, figureMm, box, dimensions, stations, labels, marks, marksWhileMoved: [] }
}

/** Straight lines as boxes, for what has to keep off them; those that run slanting are let through. */
function lineBoxes(lines: readonly PathCommand[]): Bounds[] {
  const boxes: Bounds[] = []
  let at: Point | null = null
  for (const command of lines) {
    if (command[0] === 'Z') continue
    const end = { x: command.at(-2) as number, y: command.at(-1) as number }
    if (command[0] === 'L' && at !== null && (at.x === end.x || at.y === end.y)) boxes.push(boundsOf([at, end]))
    at = end
  }
  return boxes
}

function layRadius(dimension: RadiusDimension, figureMm: number, text: string): LaidDimension {
  const toward = { x: Math.cos(dimension.towardRad), y: Math.sin(dimension.towardRad) }
  const on = (r: number) => ({ x: dimension.centre.x + toward.x * r, y: dimension.centre.y + toward.y * r })
  const start = on(dimension.radiusMm)
  const end = on(Math.max(dimension.reachMm, dimension.radiusMm))
  return {
    figured: dimension.figured,
    lines: [
      ['M', start.x, start.y],
      ['L', end.x, end.y],
    ],
    ticks: [{ at: start, alongDeg: (dimension.towardRad * 180) / Math.PI, mark: 'stroke' }],
    figure: textAway(text, figureMm, end, toward),
  }
}

function layAngle(dimension: AngleDimension, figureMm: number, text: string): LaidDimension {
  const { vertex, fromRad, toRad, radiusMm } = dimension
  const on = (angle: number) => ({ x: vertex.x + radiusMm * Math.cos(angle), y: vertex.y + radiusMm * Math.sin(angle) })
  const middle = fromRad + (toRad - fromRad) * dimension.figureAt
  return {
    figured: dimension.figured,
    lines: arcAbout(vertex, radiusMm, fromRad, toRad),
    ticks: [fromRad, toRad].map((angle) => ({ at: on(angle), alongDeg: (angle * 180) / Math.PI + 90, mark: 'stroke' })),
    figure: textAway(text, figureMm, on(middle), { x: 1, y: 0 }),
  }
}

/** A word where it belongs, or on another side of its place, or a line further off; one that can be spared stands there or not at all (null). */
function placeLabel(shape: Label, word: string, figureMm: number, taken: readonly Bounds[]): LaidText | null {
  const { x, y } = shape.away
  const placed = textAway(word, figureMm, shape.at, shape.away)
  if (shape.isOptional) return isFree(placed, taken) ? placed : null
  const sides = [
    { x, y },
    { x, y: -y },
    { x: -x, y },
    { x: -x, y: -y },
  ]
  const texts = [0, 1.3, -1.3, 2.6].flatMap((further) =>
    sides.map((away) => {
      const text = textAway(word, figureMm, shape.at, away)
      return { ...text, offset: { x: text.offset.x, y: text.offset.y + further * figureMm } }
    }),
  )
  return texts.find((text) => isFree(text, taken)) ?? placed
}
