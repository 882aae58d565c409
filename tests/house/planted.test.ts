import { describe, expect, test } from 'vitest'
import { RULES } from './rules.ts'
import { readSource } from './source.ts'

const faultsOf = (name: string, path: string, text: string) =>
  RULES.find((rule) => rule.name === name)!.check(readSource(path, text))
const LATER = ['TO', 'DO'].join('')

/** For every rule files that break it, and files near them that do not. */
const PLANTED: Readonly<
  Record<string, { readonly red: readonly [string, string][]; readonly green: readonly [string, string][] }>
> = {
  'every file has a room': {
    red: [
      ['src/attic/box.ts', ''],
      ['src/box.ts', ''],
      ['src/core/utils.ts', ''],
      ['src/ui/helpers/box.tsx', ''],
    ],
    green: [['src/core/geometry/box.ts', '']],
  },
  'rooms import whom they may': {
    red: [
      ['src/core/compute.ts', "import { useState } from 'react'"],
      ['src/core/plan.ts', "import type { CommissionDoc } from '../record/commission.ts'"],
      ['src/core/plan.ts', "import { z } from 'zod'"],
      ['src/record/door.ts', "import { openDatabase } from '../storage/database.ts'"],
      ['src/words/fields.ts', "import { FIELDS } from '../record/fields.ts'"],
      ['src/ui/Table.tsx', "import { workshop } from '../state/workshop.ts'"],
      ['src/ui/Table.tsx', "import { CATALOGUE, type About } from '../core/catalogue.ts'"],
      ['src/views/list/List.tsx', "import { writeDurably } from '../../storage/writeDurably.ts'"],
      ['src/views/list/List.tsx', "const later = () => import('../../storage/documents.ts')"],
      ['src/state/hooks.ts', "export { Table } from '../ui/Table.tsx'"],
      ['src/format/figure.ts', "import\n  'left-pad'\n"],
      ['src/views/list/List.tsx', "import demo from '../../../demo-data/commissions/one.json'"],
    ],
    green: [
      ['src/words/fields.ts', "import type { FieldRange } from '../record/fields.ts'"],
      ['src/words/fields.ts', "import { type FieldRange } from '../record/fields.ts'"],
      ['src/app/main.tsx', "import './shell.css'"],
      ['src/files/packedFiles.ts', "const one = () => import('../../demo-data/models/one.json')"],
      ['src/core/compute.ts', "// import { useState } from 'react'\nconst text = \"import { x } from 'react'\""],
      ['src/command/bench.ts', "import { cpus } from 'node:os'"],
    ],
  },
  'the core keeps to its floors': {
    red: [
      ['src/core/geometry/arc.ts', "import { makeBack } from '../instrument/back.ts'"],
      ['src/core/units/mm.ts', "import { arc } from '../geometry/piece.ts'"],
      ['src/core/instrument/back.ts', "import { compute } from '../compute.ts'"],
      ['src/core/instrument/back.ts', "import type { Plan } from '../plan.ts'"],
      ['src/core/instrument/back.ts', "import type { CommissionDoc } from '../../record/commission.ts'"],
    ],
    green: [
      [
        'src/core/instrument/back.ts',
        "import type { BackPlan } from '../plan.ts'\nimport { sphere } from '../geometry/surface.ts'",
      ],
    ],
  },
  'views do not compute': {
    red: [
      ['src/views/sheets/Sides.tsx', "import { compute } from '../../core/compute.ts'"],
      ['src/views/sheets/Sides.tsx', "import { sagittaMm } from '../../core/geometry/sagitta.ts'"],
      ['src/views/sheets/Sides.tsx', 'const halfMm = widthMm / 2'],
      ['src/views/sheets/Sides.tsx', 'const width = 2 * row.halfMm'],
      ['src/views/sheets/Sides.tsx', 'const d = top.depthMm - (back.depthMm)'],
      ['src/views/sheets/Sides.tsx', 'const x = Math.cos(angle)'],
    ],
    green: [
      [
        'src/views/sheets/Sides.tsx',
        "import { CATALOGUE } from '../../core/catalogue.ts'\nimport type { Computed } from '../../core/compute.ts'",
      ],
      ['src/views/sheets/Sides.tsx', "const key = 'sides.depthMm' + index // widthMm / 2"],
    ],
  },
  'the core is pure': {
    red: [
      ['src/core/compute.ts', 'const now = Date.now()'],
      ['src/core/compute.ts', 'const chance = Math.random()'],
      ['src/core/compute.ts', "document.title = ''"],
      ['src/core/compute.ts', "throw new Error('')"],
      ['src/core/compute.ts', "const why = 'the waist is too tight'"],
    ],
    green: [
      [
        'src/core/compute.ts',
        "// the waist is too tight\nconst form = 'across'\nconst path = 'outline.keyWidths.waistMm'",
      ],
    ],
  },
  'only device reads the clock, the dice and the browser': {
    red: [
      ['src/state/store.ts', 'const at = new Date().toISOString()'],
      ['src/storage/rows.ts', 'const id = crypto.randomUUID()'],
      ['src/views/list/List.tsx', 'void navigator.clipboard.writeText(text)'],
    ],
    green: [
      ['src/device/clock.ts', 'export const now = () => new Date().toISOString()'],
      ['src/format/formatDate.ts', 'const day = new Date(iso)'],
    ],
  },
  'paths are drawn in drawing': {
    red: [
      ['src/views/list/List.tsx', 'const path = `M${x} ${y} L${z} ${y}`'],
      ['src/ui/Mark.tsx', 'return <path d={`M ${x},${y} l ${w} 0`} />'],
    ],
    green: [
      ['src/drawing/svgPath.ts', 'const path = `M${x} ${y}`'],
      ['src/ui/Mark.tsx', 'return <path d="M4 4 20 20" />'],
    ],
  },
  'rounding is for format': {
    red: [
      ['src/views/list/List.tsx', 'const text = width.toFixed(1)'],
      ['src/core/compute.ts', 'const text = width.toPrecision(3)'],
      ['src/papers/page.ts', 'const mm = Math.round(width)'],
    ],
    green: [['src/format/rounding.ts', 'const text = Math.round(width).toFixed(1)']],
  },
  'no barrels': {
    red: [
      ['src/core/index.ts', ''],
      ['src/core/all.ts', "export * from './plan.ts'"],
    ],
    green: [['src/core/plan.ts', 'export const all = 1']],
  },
  'nothing is left for later': {
    red: [
      ['src/core/plan.ts', `// ${LATER}: mend`],
      ['tests/core/plan.test.ts', ['test', "only('x', () => {})"].join('.')],
      ['tests/core/plan.test.ts', ['describe', "skip('x', () => {})"].join('.')],
    ],
    green: [['tests/core/plan.test.ts', "test('x', () => {})"]],
  },
  'a file is short': {
    red: [['src/core/plan.ts', 'x\n'.repeat(301)]],
    green: [['src/core/plan.ts', 'x\n'.repeat(300)]],
  },
  'nothing comes from another host': {
    red: [['src/ui/Table.tsx', "const font = 'https://fonts.example.org/a.woff2'"]],
    green: [['src/ui/Table.tsx', "const ns = 'http://www.w3.org/2000/svg' // https://example.org"]],
  },
}

test('every rule has files planted for it', () => {
  expect(Object.keys(PLANTED).sort()).toEqual(RULES.map(({ name }) => name).sort())
})

describe.each(Object.entries(PLANTED))('%s', (name, { red, green }) => {
  test.each(red)('red: %s %j', (path, text) => expect(faultsOf(name, path, text)).not.toEqual([]))
  test.each(green)('green: %s %j', (path, text) => expect(faultsOf(name, path, text)).toEqual([]))
})
