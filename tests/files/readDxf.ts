import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Point } from '../../src/core/geometry/point.ts'

/** What ezdxf finds in a DXF; see readDxf.py. */
export interface ReadDxf {
  readonly version: string
  readonly units: number
  readonly measurement: number
  readonly errors: readonly string[]
  readonly fixes: readonly string[]
  readonly layers: Readonly<Record<string, number>>
  readonly lineTypes: readonly string[]
  readonly entities: readonly ReadEntity[]
}
export interface ReadEntity {
  readonly type: string
  readonly layer: string
  readonly lineType: string
  readonly points: readonly Point[]
  readonly text?: string
  readonly height?: number
  readonly rotation?: number
  readonly align?: string
  readonly degree?: number
  readonly knots?: readonly number[]
  readonly controlPoints?: number
  readonly isClosed?: boolean
  readonly vertices?: number
  readonly radius?: number
  readonly centre?: readonly [number, number]
}

/** As it comes from there: points as pairs. */
type RawEntity = Omit<ReadEntity, 'points'> & { readonly points: readonly (readonly [number, number])[] }

const has = (python: string): boolean => spawnSync(python, ['-c', 'import ezdxf']).status === 0
/** Debian's modules belong to Debian's python3, and another may come first. */
const python = ['python3', '/usr/bin/python3'].find(has) ?? null

/** Whether a DXF can be read by ezdxf here: said where it cannot, and in CI it has to. */
export function canReadDxf(): boolean {
  if (python !== null) return true
  if (process.env['CI'] === 'true') throw new Error('ezdxf is missing: install python3-ezdxf.')
  console.log('Skipped: the DXF files are not read by ezdxf, since it is not here (python3-ezdxf).')
  return false
}

export function readDxf(text: string): ReadDxf {
  const folder = mkdtempSync(join(tmpdir(), 'ribwright-dxf-'))
  const file = join(folder, 'plot.dxf')
  writeFileSync(file, text)
  const script = fileURLToPath(new URL('readDxf.py', import.meta.url))
  const { stdout, stderr, status } = spawnSync(python ?? 'python3', [script, file], {
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
  })
  rmSync(folder, { recursive: true, force: true })
  if (status !== 0) throw new Error(stderr)
  const read = JSON.parse(stdout) as Omit<ReadDxf, 'entities'> & { entities: readonly RawEntity[] }
  return {
    ...read,
    entities: read.entities.map((entity) => ({ ...entity, points: entity.points.map(([x, y]) => ({ x, y })) })),
  }
}
