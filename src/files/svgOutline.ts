import { SaxesParser, type SaxesTagNS } from 'saxes'
import svgpath from 'svgpath'
import type { DrawnFile, DrawnFileProblem, DrawnUnit, LeftOutKind } from '../record/drawnFile.ts'
import { type Result, refuse } from '../record/result.ts'
import { type Affine, compose, UNMOVED } from './affine.ts'
import { closeTo, type Gathering, gatherDrawing, MOST_DRAWN_BYTES } from './drawnPaths.ts'
import { readPageScale } from './svgLength.ts'
import { type Attributes, readShape, SHAPES } from './svgShapes.ts'

const SVG = 'http://www.w3.org/2000/svg'
const CONTAINERS: ReadonlySet<string> = new Set(['g', 'a', 'switch'])
const LEFT_OUT: Readonly<Record<string, LeftOutKind>> = {
  text: 'text',
  image: 'picture',
  svg: 'picture',
  foreignObject: 'picture',
  use: 'reference',
}
/** Deeper nesting is no drawing. */
const MOST_DEPTH = 200
/** Fed in portions, so that a file is given up soon after something is wrong with it. */
const PORTION = 8192

/** A document type that names itself and defines nothing: what it names is never fetched. */
const NAMED_DOCTYPE = /^\s*svg(?:\s+PUBLIC\s+(?:"[^"[\]]*"|'[^'[\]]*')(?:\s+(?:"[^"[\]]*"|'[^'[\]]*'))?)?\s*$/

/** Where the reading of a page stands: what is open round it, and how its coordinates become those of the drawing. */
interface Page {
  readonly gathering: Gathering
  /** Transforms of the open elements; null inside one that is passed over. */
  readonly open: (Affine | null)[]
  unit: DrawnUnit | null
  close: number
}

/**
 * The lines drawn in an SVG file, as data: in mm with y up where the page says how large it is in a unit of length, in its own units
 * otherwise. Strict XML whose document type, if any, defines nothing; nothing in it is run, fetched or kept as markup. Lines, Bezier
 * curves and circular arcs exactly, elliptical arcs within 0.0005 mm. Whatever the text, a plain reason comes back where it cannot be read.
 */
export function readSvgOutline(text: string): Result<DrawnFile, DrawnFileProblem> {
  if (text.length > MOST_DRAWN_BYTES) return refuse('tooLarge')
  const page: Page = { gathering: gatherDrawing(), open: [], unit: null, close: closeTo(null) }
  const { gathering } = page
  const parser = new SaxesParser({ xmlns: true })
  parser.on('error', () => gathering.fail('notXml'))
  parser.on('doctype', (doctype) => {
    if (!NAMED_DOCTYPE.test(doctype)) gathering.fail('doctype')
  })
  parser.on('opentag', (tag) => {
    if (!gathering.hasFailed()) openElement(page, tag)
  })
  parser.on('closetag', () => page.open.pop())
  const whole = text.startsWith('\uFEFF') ? text.slice(1) : text
  for (let at = 0; at < whole.length && !gathering.hasFailed(); at += PORTION)
    parser.write(whole.slice(at, at + PORTION))
  if (!gathering.hasFailed()) parser.close()
  return gathering.finish(page.unit)
}

function openElement(page: Page, tag: SaxesTagNS): void {
  const { gathering, open } = page
  const name = tag.uri === SVG || tag.uri === '' ? tag.local : ''
  const attributes: Attributes = Object.fromEntries(
    Object.values(tag.attributes).map(({ name: key, value }) => [key, value]),
  )
  if (open.length >= MOST_DEPTH) return gathering.fail('notXml')
  if (open.length === 0) return openPage(page, name, attributes)
  const around = open.at(-1)!
  open.push(null)
  if (around === null) return
  const isShape = SHAPES.has(name)
  const kind = Object.hasOwn(LEFT_OUT, name) ? LEFT_OUT[name] : undefined
  if (kind !== undefined) {
    gathering.leaveOut(kind)
    return
  }
  if (!isShape && !CONTAINERS.has(name)) return
  const { style = '' } = attributes
  if (attributes['display'] === 'none' || attributes['visibility'] === 'hidden' || HIDDEN.test(style)) {
    gathering.leaveOut('hidden')
    return
  }
  const own = STYLED.test(style) ? null : readTransform(attributes['transform'] ?? '')
  if (own === null) return gathering.fail('badTransform')
  const affine = compose(around, own)
  if (isShape) addShape(page, name, attributes, affine)
  else open[open.length - 1] = affine
}

const HIDDEN = /(?:^|;)\s*(?:display\s*:\s*none|visibility\s*:\s*hidden)/i
const STYLED = /(?:^|;)\s*(?:transform|translate|rotate|scale)\s*:/i

function openPage(page: Page, name: string, attributes: Attributes): void {
  const { gathering } = page
  if (name !== 'svg') return gathering.fail('notSvg')
  if (attributes['transform'] !== undefined) return gathering.fail('badTransform')
  const { width, height, viewBox, preserveAspectRatio } = attributes
  const scale = readPageScale({ width, height, viewBox, preserveAspectRatio })
  if (scale === null) return gathering.fail('badPath')
  page.unit = scale.unit
  page.close = closeTo(scale.unit === null ? null : 1)
  page.open.push(scale.toDrawing)
}

function addShape({ gathering, close }: Page, name: string, attributes: Attributes, affine: Affine): void {
  const shapes = readShape(name, attributes, affine, close)
  if (typeof shapes === 'string') return gathering.fail(shapes)
  for (const { path, isClosed } of shapes) gathering.add(attributes['id'] ?? '', path, isClosed)
}

const LONGEST_TRANSFORM = 2000
const ARGUMENTS = String.raw`[\s,]*(?:[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?(?:\s*,\s*|\s+|(?=[-+)])))*`
const ONE_TRANSFORM = new RegExp(`^\\s*,?\\s*(matrix|translate|scale|rotate|skewX|skewY)\\s*\\((${ARGUMENTS})\\)`)
const COUNTS: Readonly<Record<string, readonly number[]>> = {
  matrix: [6],
  translate: [1, 2],
  scale: [1, 2],
  rotate: [1, 3],
  skewX: [1],
  skewY: [1],
}

/**
 * A transform attribute as six numbers; null where any of it cannot be read. What is well formed is worked out by drawing the two unit
 * vectors through it.
 */
export function readTransform(text: string): Affine | null {
  if (text.trim() === '' || text.trim() === 'none') return UNMOVED
  if (text.length > LONGEST_TRANSFORM) return null
  let rest = text.trim()
  while (rest !== '') {
    const [whole, name = '', list = ''] = ONE_TRANSFORM.exec(rest) ?? []
    const count = list.match(/(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g)?.length ?? 0
    if (whole === undefined || COUNTS[name]?.includes(count) !== true) return null
    rest = rest.slice(whole.length)
  }
  const drawn: number[] = []
  svgpath('M0 0l1 0l0 1')
    // Signs may part numbers where blanks are wanted.
    .transform(text.replaceAll(/(?<![eE(,\s])(?=[-+])/g, ' '))
    .iterate((segment) => {
      drawn.push(...segment.slice(1).map(Number))
    })
  const [e = 0, f = 0, a = 1, b = 0, c = 0, d = 1] = drawn
  return [a, b, c, d, e, f].every(Number.isFinite) ? [a, b, c, d, e, f] : null
}
