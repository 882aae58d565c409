import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { aboutNumber, NUMBER_KEYS } from '../../src/core/catalogue.ts'
import { NUMBER_WORDS } from '../../src/words/numbers.ts'

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8')

/** The unit a key prints in: lengths in mm, angles in rad, whatever the shop shows them in. */
const unitOf = (key: (typeof NUMBER_KEYS)[number]): string =>
  ({
    angle: 'rad',
    area: 'mm²',
    count: 'count',
    bodyLength: 'mm',
    domeRadius: 'mm',
    thickness: 'mm',
    fineLength: 'mm',
    across: 'mm',
    force: 'N',
    stress: 'MPa',
    torque: 'N m',
    frequency: 'Hz',
    linearMass: 'g/m',
    volume: 'mm³',
    ratio: 'ratio',
    interval: 'cents',
    resonance: 'Hz',
  })[aboutNumber(key).quantity]

test('the README lists every number with its unit, under its name in the program, and no other', () => {
  const rows = readme
    .split('\n')
    .filter((line) => /^\| `[\w.[\]]+` \| (mm[²³]?|ratio|cents|rad|count|N|MPa|N m|Hz|g\/m) \|/.test(line))
  expect(rows).toEqual(NUMBER_KEYS.map((key) => `| \`${key}\` | ${unitOf(key)} | ${NUMBER_WORDS[key].name} |`))
})

test('a key says its unit itself', () => {
  for (const key of NUMBER_KEYS) {
    const ending = {
      mm: /Mm$/,
      rad: /Rad$/,
      'mm²': /Mm2$/,
      'mm³': /Mm3$/,
      ratio: /ratio$/,
      cents: /cents$/,
      count: /(passes|inflections|blank|[nN]umber|fret|count)$/,
      N: /N$/,
      'N m': /Nm$/,
      Hz: /Hz$/,
      'g/m': /GPerM$/,
      MPa: /MPa$/,
    }[unitOf(key)]
    expect(key).toMatch(ending ?? /never/)
  }
})
