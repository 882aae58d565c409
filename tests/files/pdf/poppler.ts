import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Point } from '../../../src/core/geometry/point.ts'
import { pointsAlong } from '../../drawing/svgArc.ts'

const MM_PER_POINT = 25.4 / 72

/** Whether the tools that read a PDF without us are here; where they are not, it is said why nothing is read. */
export function hasPoppler(): boolean {
  const has = spawnSync('pdftocairo', ['-v']).error === undefined
  if (!has && process.env['CI'] === 'true') throw new Error('pdftocairo is missing: install poppler-utils.')
  if (!has) console.log('Skipped: the files are not read back, since pdftocairo is not here (poppler-utils).')
  return has
}

/** A file as others read it. */
export interface ReadPdf {
  readonly text: (page: number) => string
  readonly info: string
  readonly fonts: string
  readonly strokes: (page: number) => readonly ReadStroke[]
  /** Words as they stand on a page, mm. */
  readonly words: (page: number) => readonly { readonly text: string; readonly widthMm: number; readonly yMm: number }[]
  readonly raster: (page: number, dpi: number) => Raster
  readonly close: () => void
}

/** Points close together along a line of a page, mm from its upper left corner. */
export interface ReadStroke {
  readonly penMm: number
  readonly points: readonly Point[]
}

/** Grey of each dot, 0 black to 255 white. */
export interface Raster {
  readonly width: number
  readonly height: number
  readonly at: (x: number, y: number) => number
}

export function readPdf(bytes: Uint8Array): ReadPdf {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-'))
  const file = join(folder, 'file.pdf')
  writeFileSync(file, bytes)
  const run = (tool: string, args: readonly string[]): string => {
    const { stdout, stderr, status } = spawnSync(tool, args, { encoding: 'utf8', maxBuffer: 1 << 28 })
    if (status !== 0 || /error/i.test(stderr)) throw new Error(`${tool} says: ${stderr}`)
    return stdout
  }
  const only = (page: number) => ['-f', String(page), '-l', String(page)]
  return {
    text: (page) => run('pdftotext', ['-layout', ...only(page), file, '-']),
    info: run('pdfinfo', ['-f', '1', '-l', '999', file]),
    fonts: run('pdffonts', [file]),
    strokes: (page) => {
      const out = join(folder, `${page}.svg`)
      run('pdftocairo', ['-svg', '-noshrink', '-nocenter', ...only(page), file, out])
      return strokesOf(readFileSync(out, 'utf8'))
    },
    words: (page) =>
      [
        ...run('pdftotext', ['-bbox', ...only(page), file, '-']).matchAll(
          /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</g,
        ),
      ].map(([, ...read]) => {
        const [minX, minY, maxX, maxY] = read.slice(0, 4).map((points) => Number(points) * MM_PER_POINT) as [
          number,
          number,
          number,
          number,
        ]
        return { text: read[4]!, widthMm: maxX - minX, yMm: (minY + maxY) / 2 }
      }),
    raster: (page, dpi) => {
      const out = join(folder, `${page}-${dpi}`)
      run('pdftoppm', ['-gray', '-r', String(dpi), '-singlefile', ...only(page), file, out])
      return rasterOf(readFileSync(`${out}.pgm`))
    },
    close: () => rmSync(folder, { recursive: true }),
  }
}

/** How far a place is from the nearest line. */
export function distanceMm(strokes: readonly { readonly points: readonly Point[] }[], at: Point): number {
  let least = Number.POSITIVE_INFINITY
  for (const { points } of strokes)
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1]!, points[i]!]
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const whole = dx * dx + dy * dy
      const t = whole === 0 ? 0 : Math.min(Math.max(((at.x - a.x) * dx + (at.y - a.y) * dy) / whole, 0), 1)
      least = Math.min(least, Math.hypot(at.x - a.x - t * dx, at.y - a.y - t * dy))
    }
  return least
}

/** Every stroked path of an SVG by cairo. What fills is lettering. */
function strokesOf(svg: string): ReadStroke[] {
  return [...svg.matchAll(/<path style="([^"]*)" d="([^"]*)"(?: transform="matrix\(([^)]*)\)")?/g)].flatMap(
    ([, style, d, matrix]) => {
      const pen = /stroke-width:([\d.]+)/.exec(style!)?.[1]
      if (pen === undefined || !style!.includes('stroke:rgb(0%')) return []
      const [a, b, c, e, x, y] = (matrix ?? '1,0,0,1,0,0').split(',').map(Number)
      return d!
        .split(/(?=M)/)
        .filter((part) => part.trim() !== '')
        .map((part) => ({
          penMm: Number(pen) * a! * MM_PER_POINT,
          points: [firstOf(part), ...pointsAlong(part, 64)].map((point) => ({
            x: (a! * point.x + c! * point.y + x!) * MM_PER_POINT,
            y: (b! * point.x + e! * point.y + y!) * MM_PER_POINT,
          })),
        }))
    },
  )
}

function firstOf(part: string): Point {
  const [x, y] = part
    .replace('M', '')
    .trim()
    .split(/[\s,]+/)
    .map(Number)
  return { x: x!, y: y! }
}

function rasterOf(pgm: Buffer): Raster {
  const [, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString('latin1'))!.map(Number)
  const start = pgm.length - width! * height!
  return { width: width!, height: height!, at: (x, y) => pgm[start + y * width! + x]! }
}
