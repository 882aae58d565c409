import { type Chord, CHORD_MM, chordsOf, crosses } from '../../drawing/chords.ts'
import { boundsOf, overlap } from '../../drawing/bounds.ts'
import type { Bounds } from '../../drawing/drawing.ts'
import type { Lettering, Plot, Stroke } from '../../drawing/plot.ts'
import { MM_PER_PT } from '../page.ts'
import { textWidthMm } from '../textWidth.ts'

/** A plot as what is asked of it when it is cut into sheets: where its ink lies. */
export interface Ink {
  readonly strokes: readonly { readonly stroke: Stroke; readonly bounds: Bounds; readonly chords: readonly Chord[] }[]
  readonly letterings: readonly { readonly lettering: Lettering; readonly bounds: Bounds }[]
}

export function inkOf({ strokes, letterings }: Plot): Ink {
  return {
    strokes: strokes.flatMap((stroke) => {
      const chords = chordsOf(stroke.commands)
      if (chords.length === 0) return []
      const bounds = boundsOf(chords.flatMap(({ from, to }) => [from, to]))
      return [{ stroke, bounds: grown(bounds, stroke.penMm / 2 + CHORD_MM), chords }]
    }),
    letterings: letterings.map((lettering) => ({ lettering, bounds: letteringBox(lettering) })),
  }
}

/** The room a line of text takes: its own height, and its width on the safe side. */
export function letteringBox({ text, at, sizeMm, heightMm, turnDeg }: Lettering): Bounds {
  const along = textWidthMm(text, sizeMm / MM_PER_PT)
  const [w, h] = turnDeg === 0 ? [along, heightMm] : [heightMm, along]
  return { minX: at.x - w / 2, minY: at.y - h / 2, maxX: at.x + w / 2, maxY: at.y + h / 2 }
}

export const grown = ({ minX, minY, maxX, maxY }: Bounds, byMm: number): Bounds => ({
  minX: minX - byMm,
  minY: minY - byMm,
  maxX: maxX + byMm,
  maxY: maxY + byMm,
})

/** Whether a stroke passes through a box. What lies round a box without touching it does not count. */
export function hasStroke({ strokes }: Ink, box: Bounds): boolean {
  return strokes.some(({ stroke, bounds, chords }) => {
    if (!overlap(bounds, box)) return false
    const room = grown(box, stroke.penMm / 2)
    return chords.some((chord) => crosses(chord, room))
  })
}

export const hasLettering = ({ letterings }: Ink, box: Bounds): boolean =>
  letterings.some(({ bounds }) => overlap(bounds, box))

export const hasInk = (ink: Ink, box: Bounds): boolean => hasStroke(ink, box) || hasLettering(ink, box)
