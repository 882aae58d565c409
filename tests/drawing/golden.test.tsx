import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { DrawingFrame } from '../../src/ui/DrawingFrame.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { everyDrawing, plainValue } from './everyDrawing.ts'
import { DRAWING_WORDS } from '../../src/words/drawings.ts'

/** Accepted drawings to look at. One that comes out otherwise is written beside as `-changed`: look at both, then replace or mend. */
const FOLDER = new URL('../golden/', import.meta.url)
const drawings = everyDrawing(compute(STEEL_STRING.plan), 5)

/** As a file of its own: the SVG alone, three decimals, one element a line, black. */
function asFile(markup: string): string {
  const svg = /<svg[\s\S]*<\/svg>/.exec(markup)?.[0] ?? ''
  return `${svg
    .replace('<svg ', '<svg font-family="sans-serif" ')
    .replaceAll(/-?\d+\.\d{4,}/g, (number) => String(Math.round(Number(number) * 1e3) / 1e3))
    .replaceAll('><', '>\n<')}\n`
}

describe('accepted drawings', () => {
  test.each(['plan', 'side', 'blankTreble', 'rosette', 'fretboard', 'neckSet', 'bridge'] as const)('%s', (name) => {
    const drawn = asFile(
      renderToStaticMarkup(
        <DrawingFrame
          mode="paper"
          drawing={drawings[name]}
          told={DRAWING_WORDS[name]}
          formatValue={plainValue}
          widthMm={120}
          heightMm={null}
        />,
      ),
    )
    const accepted = new URL(`${name}.svg`, FOLDER)
    const changed = new URL(`${name}-changed.svg`, FOLDER)
    if (!existsSync(accepted) && process.env['CI'] === undefined) writeFileSync(accepted, drawn)
    if (readFileSync(accepted, 'utf8') === drawn) rmSync(changed, { force: true })
    else {
      writeFileSync(changed, drawn)
      expect.fail(`${name} is drawn otherwise than accepted: look at tests/golden/${name}-changed.svg`)
    }
  })

  test('carry no style attribute, which a strict policy would refuse', () => {
    for (const drawing of Object.values(drawings)) {
      const markup = renderToStaticMarkup(
        <DrawingFrame
          mode="screen"
          drawing={drawing}
          told={DRAWING_WORDS[drawing.name]}
          formatValue={plainValue}
          heights={{ most: 20, onChange: () => undefined }}
        />,
      )
      expect(markup).not.toContain('style=')
      expect(markup).not.toContain('NaN')
    }
  })
})
