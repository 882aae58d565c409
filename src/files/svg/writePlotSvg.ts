import type { Lettering, Plot, Stroke } from '../../drawing/plot.ts'
import { svgNumber, svgPath } from '../../drawing/svgPath.ts'
import { FILE_LAYERS, type FileLayer, LAYER_COLOURS } from '../plotLayers.ts'

export interface SvgNames {
  readonly title: string
  /** What each layer is called by one who opens the file. */
  readonly layerNames: Readonly<Record<FileLayer, string>>
}

/**
 * A plot as an SVG file: a unit of the file is a millimetre of the plot, and width and height say so, so that it opens at its size. A group
 * for each layer that has something on it, named by its id and its title. Lines only: what hides another line on paper has no fill here,
 * since a laser takes a fill for something to engrave; and what is cut through is drawn through, since a dash would be a bridge.
 */
export function writePlotSvg(plot: Plot, { title, layerNames }: SvgNames): string {
  const { minX, minY, maxX, maxY } = plot.box
  const [width, height] = [number(maxX - minX), number(maxY - minY)]
  const layers = FILE_LAYERS.flatMap((layer) => {
    const lines = layer === 'text' ? plot.letterings.map(textElement) : linesOf(plot, layer)
    return lines.length === 0 ? [] : [layerElement(layer, layerNames[layer], lines)]
  })
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${number(minX)} ${number(minY)} ${width} ${height}">`,
    `<title>${escaped(title)}</title>`,
    ...layers,
    '</svg>',
    '',
  ].join('\n')
}

const linesOf = (plot: Plot, layer: Stroke['layer']): string[] =>
  plot.strokes.filter((stroke) => stroke.layer === layer && stroke.commands.length > 0).map(pathElement)

function layerElement(layer: FileLayer, name: string, lines: readonly string[]): string {
  const { rgb } = LAYER_COLOURS[layer]
  const ink =
    layer === 'text'
      ? `fill="${rgb}" font-family="Barlow, sans-serif" text-anchor="middle"`
      : `fill="none" stroke="${rgb}" stroke-linejoin="round"`
  return [`<g id="${layer}" ${ink}>`, `<title>${escaped(name)}</title>`, ...lines, '</g>'].join('\n')
}

function pathElement({ layer, commands, penMm, dashesMm }: Stroke): string {
  const dashes = layer === 'cut' || dashesMm.length === 0 ? '' : ` stroke-dasharray="${dashesMm.map(number).join(' ')}"`
  return `<path stroke-width="${number(penMm)}"${dashes} d="${svgPath(commands)}"/>`
}

/** Its middle at its place: digits stand on the baseline. */
function textElement({ text, at, sizeMm, heightMm, turnDeg }: Lettering): string {
  const turn = turnDeg === 0 ? '' : ` transform="rotate(${turnDeg} ${number(at.x)} ${number(at.y)})"`
  return `<text x="${number(at.x)}" y="${number(at.y + heightMm / 2)}" font-size="${number(sizeMm)}"${turn}>${escaped(text)}</text>`
}

const number = (value: number): number => svgNumber(value)

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** Text as XML takes it; signs it cannot hold at all are left out. */
const escaped = (text: string): string =>
  text
    .replaceAll(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign)
