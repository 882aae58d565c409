import type { Geometry } from '../../core/compute.ts'
import { type BraceFace, braceFace } from '../../core/instrument/brace/braceArch.ts'

/** The gluing face of a brace on the plate it stands on. */
export const faceOfBrace = (
  { top, back }: Pick<Geometry, 'top' | 'back'>,
  brace: Geometry['bracing']['placed'][number],
): BraceFace =>
  braceFace(
    brace,
    brace.plan.plate === 'top' ? { surface: top.plate, outward: 'up' } : { surface: back.surface, outward: 'down' },
  )
