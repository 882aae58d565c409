import type { Computed } from '../../core/compute.ts'
import type { HeadPlan } from '../../core/neckPlan.ts'
import { shapesBounds } from '../bounds.ts'
import { label, ordinate, outside } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured, figuredAcross, figuredRow } from '../figured.ts'
import { circle, drawn, through } from '../line.ts'

/** The head's face from above, the nut to the left: tuner holes and the strings' ways from their slots. The head's outline is each maker's own. */
export function headDrawing({ numbers, geometry }: Computed, head: HeadPlan): Drawing {
  const { lines, shape } = geometry.neck
  const half = shape.halfWidthAtMm(shape.nutMm)
  const rows = numbers.tuners
  const posts = rows.map((row) => ({ x: row.fromNutMm, y: row.acrossMm }))
  const shapes: Shape[] = [
    drawn(
      'edge',
      through([
        { x: 0, y: -half },
        { x: 0, y: half },
      ]),
    ),
    ...posts.map((at) => drawn('edge', circle(at, Math.max(head.holeMm / 2, 1)))),
    ...(head.postMm > 0 ? posts.map((at) => drawn('thin', circle(at, head.postMm / 2))) : []),
    ...lines.map((line, i) => {
      const post = posts[i] ?? { x: 30, y: 0 }
      const inner = Math.sign(post.y) * Math.max(Math.abs(post.y) - head.postMm / 2, 0)
      return drawn(
        'ghost',
        through([
          { x: -14, y: line.nutAcrossMm },
          { x: 0, y: line.nutAcrossMm },
          { x: post.x, y: inner },
        ]),
      )
    }),
    drawn(
      'centre',
      through([
        { x: -14, y: 0 },
        { x: Math.max(head.lengthMm, 20), y: 0 },
      ]),
    ),
  ]
  const bounds = shapesBounds(shapes)
  return {
    name: 'head',
    seenFrom: 'front',
    bounds,
    heightsTimes: 1,
    // At the edges: the corners at the right are where the last posts stand.
    marks: { top: 'bass', bottom: 'treble' },
    shapes: [
      ...shapes,
      ...rows.flatMap((row, i) => [
        ordinate(
          figuredRow('tuners[].fromNutMm', i, row.fromNutMm),
          { x: row.fromNutMm, y: row.acrossMm < 0 ? bounds.minY : bounds.maxY },
          { x: 0, y: row.acrossMm < 0 ? -1 : 1 },
          2,
          true,
        ),
        ordinate(
          figuredAcross('tuners[].acrossMm', i, row.acrossMm),
          { x: row.fromNutMm + head.holeMm / 2, y: row.acrossMm },
          { x: 1, y: 0 },
          3,
        ),
      ]),
      outside(
        figured(numbers, 'head.lengthMm'),
        'below',
        bounds.maxY,
        { x: 0, y: 0 },
        { x: Math.max(head.lengthMm, 20), y: 0 },
        2,
      ),
      label('nut', { x: 0, y: -half }, { x: -1, y: 0 }),
    ],
  }
}
