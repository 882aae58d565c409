import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseCommissionText, writeCommissionFile } from '../../src/files/commissionFile.ts'
import { SCHEMA_VERSION } from '../../src/record/commission.ts'
import { bundleOfFile, readBundle, readCommissionFile } from '../../src/record/door.ts'
import { replayLog } from '../../src/record/log.ts'
import { type Migration, MIGRATIONS, migrateBundle } from '../../src/record/migrations/migrate.ts'
import { doorSentence } from '../../src/words/doorProblem.ts'
import { beginSteel, countedIds, valueIn } from './fixture.ts'

// oxlint-disable-next-line typescript/no-explicit-any -- damage reaches anywhere into a file
type Json = Record<string, any>
const RECORDS = new URL('../records/', import.meta.url)
const frozen = (version: number): string => readFileSync(new URL(`v${version}-commission.json`, RECORDS), 'utf8')
const v1 = (): Json => JSON.parse(frozen(1)) as Json

/** The frozen record with one place damaged. */
function damaged(damage: (file: Json) => void): Json {
  const file = v1()
  damage(file)
  return file
}

describe('frozen records', () => {
  it('exist for every version there has been, and no other', () => {
    const names = Array.from({ length: SCHEMA_VERSION }, (_, i) => `v${i + 1}-commission.json`)
    expect(readdirSync(RECORDS).toSorted()).toEqual(names.toSorted())
  })

  it.each(Array.from({ length: SCHEMA_VERSION }, (_, i) => i + 1))('of version %i are read', (version) => {
    const file = valueIn(readCommissionFile(JSON.parse(frozen(version))))
    expect(file.brief.client).toBe('Odile Varnham')
    expect(file.plan.rim).toMatchObject({ depthAtTailMm: 106, sideThicknessMm: 2.2 })
    const { row, changes, facts } = bundleOfFile(file)
    expect(replayLog(changes, facts)).toEqual(row)
  })

  it('of this version are written back letter by letter', () => {
    const file = valueIn(readCommissionFile(v1()))
    expect(writeCommissionFile(bundleOfFile(file), file.shop, file.savedAt)).toBe(frozen(SCHEMA_VERSION))
  })
})

const firstRing = (file: Json): Json => Object.values(file['plan'].rosette.rings)[0] as Json

describe('a hostile or damaged file', () => {
  it.each<[string, (file: Json) => void, string]>([
    ['a depth beyond its range', (f) => void (f['plan'].rim.depthAtTailMm = 900), 'plan.rim.depthAtTailMm'],
    ['NaN, which JSON hides as null', (f) => void (f['plan'].rim.depthAtTailMm = null), 'plan.rim.depthAtTailMm'],
    ['a number in quotes', (f) => void (f['plan'].plates.topMm = '2.8'), 'plan.plates.topMm'],
    [
      'a radius in words',
      (f) => void (f['plan'].outline.keyWidths.tailRadiusMm = 'round'),
      'plan.outline.keyWidths.tailRadiusMm',
    ],
    ['a field left out', (f) => void delete f['plan'].rim.trimEachEndMm, 'plan.rim.trimEachEndMm'],
    ['a field nobody knows', (f) => void (f['plan'].rim.colour = 'red'), 'plan.rim.colour'],
    ['a form nobody knows', (f) => void (f['plan'].back.form = 'saddle'), 'plan.back.form'],
    [
      'a piece beyond its range',
      (f) => void (f['plan'].outline.pieces[1].radiusMm = 1e9),
      'plan.outline.pieces.1.radiusMm',
    ],
    ['a piece of no kind', (f) => void (f['plan'].outline.pieces[2].kind = 'spline'), 'plan.outline.pieces.2.kind'],
    ['no pieces at all', (f) => void (f['plan'].outline.pieces = []), 'plan.outline.pieces'],
    ['a list for an object', (f) => void (f['plan'].blocks = []), 'plan.blocks'],
    ['a ring under no uuid', (f) => void (f['plan'].rosette.rings['first'] = firstRing(f)), 'plan.rosette.rings.first'],
    ['a tolerance of no number', (f) => void (f['tolerances']['body.weight'] = 1), 'tolerances.body.weight'],
    ['a stage nobody knows', (f) => void ((Object.values(f['stages'])[0] as Json)['key'] = 'paint'), 'stages.'],
    ['a day that is none', (f) => void (f['brief'].promisedOn = '2026-02-30'), 'brief.promisedOn'],
    ['an id that is none', (f) => void (f['id'] = '26-007'), 'id'],
    ['no version', (f) => void delete f['schemaVersion'], 'schemaVersion'],
    ['a version in words', (f) => void (f['schemaVersion'] = 'one'), 'schemaVersion'],
    ['a version before the first', (f) => void (f['schemaVersion'] = 0), 'schemaVersion'],
    ['a log that is no list', (f) => void (f['changes'] = {}), 'changes'],
    ['facts left out', (f) => void delete f['facts'], 'facts'],
    ['a change of another document', (f) => void (f['changes'][1].docId = countedIds('c')()), 'changes.1.docId'],
    ['a fact of another document', (f) => void (f['facts'][0].docId = countedIds('c')()), 'facts.0.docId'],
    ["a fact with a change's id", (f) => void (f['facts'][0].id = f['changes'][0].id), 'facts.0.id'],
    ['two entries in one place', (f) => void (f['facts'][1].seq = f['facts'][0].seq), 'facts.1.seq'],
    ['a path into every object', (f) => void (f['changes'][1].path = ['doc', '__proto__', 'x']), 'changes.1.path.1'],
    ['a shop with no units', (f) => void delete f['shop'].units, 'shop.units'],
    ['a text of a megabyte', (f) => void (f['brief'].notes = 'x'.repeat(1e6)), 'brief.notes'],
    [
      'figures that are none in a sign-off',
      (f) => void (f['facts'][1].builtTo['body.lengthMm'] = null),
      'facts.1.builtTo.body.lengthMm',
    ],
  ])('with %s is refused, naming that field', (_, damage, field) => {
    const answer = readCommissionFile(damaged(damage))
    if (answer.ok) throw new Error('was taken')
    expect(answer.problem.code).toBe('wrongField')
    expect(answer.problem.field?.startsWith(field)).toBe(true)
    expect(doorSentence(answer.problem)).toContain(answer.problem.field)
  })

  it('says what range a field allows', () => {
    const answer = readCommissionFile(damaged((f) => void (f['plan'].rim.depthAtTailMm = 900)))
    expect(answer).toMatchObject({ problem: { detail: { kind: 'range', range: { minMm: 20, maxMm: 250 } } } })
    if (!answer.ok) expect(doorSentence(answer.problem)).toContain('from 20 to 250 (mm)')
  })

  it('of a later version is refused as too new, whatever else it holds', () => {
    const later = { ...v1(), schemaVersion: SCHEMA_VERSION + 1, plan: { shape: 'other' } }
    const before = JSON.stringify(later)
    expect(readCommissionFile(later)).toMatchObject({ ok: false, problem: { code: 'tooNew' } })
    expect(JSON.stringify(later)).toBe(before)
  })

  it.each([[null], [7], ['text'], [[]], [{}], [{ format: 'other' }]])('that is %j is not ours', (input) => {
    expect(readCommissionFile(input)).toMatchObject({ ok: false, problem: { code: 'notOurs' } })
  })

  it.each(['{"__proto__": {"polluted": 1}', '{"extra": {"constructor": {"prototype": {"polluted": 1}}}'])(
    'with keys that reach into every object is refused',
    (start) => {
      const text = `${start}, ${frozen(1).slice(1)}`
      expect(readCommissionFile(JSON.parse(text))).toMatchObject({
        ok: false,
        problem: { field: expect.stringMatching(/^(__proto__|constructor|prototype)$/) },
      })
      expect(({} as Json)['polluted']).toBeUndefined()
    },
  )

  it('nested beyond reason is unreadable, and so is one that holds itself', () => {
    const deep = `${'['.repeat(200_000)}${']'.repeat(200_000)}`
    const parsed = parseCommissionText(deep)
    const answer = parsed.ok ? readCommissionFile(damaged((f) => void (f['changes'][0].value = parsed.value))) : parsed
    expect(answer).toMatchObject({ ok: false, problem: { code: 'unreadable' } })
    const round = v1()
    round['plan'].rim.depthAtTailMm = round
    expect(readCommissionFile(round)).toMatchObject({ ok: false })
  })

  it('cut short anywhere gets an answer, never a fault', () => {
    const text = frozen(1)
    for (let length = 0; length < text.length - 2; length += 997) {
      const parsed = parseCommissionText(text.slice(0, length))
      expect(parsed).toMatchObject({ ok: false, problem: { code: 'unreadable' } })
    }
  })

  it('with any one value replaced by nonsense gets an answer, never a fault', () => {
    const nonsense = [null, -1e308, 'flat', [], {}, true]
    const places: string[][] = []
    const walk = (value: unknown, path: string[]): void => {
      if (path.length > 0) places.push(path)
      if (typeof value === 'object' && value !== null)
        for (const [key, inner] of Object.entries(value).slice(0, Array.isArray(value) ? 12 : 40))
          walk(inner, [...path, key])
    }
    walk(v1(), [])
    for (const [i, path] of places.entries()) {
      const file = v1()
      const place = path.slice(0, -1).reduce((at, step) => at[step] as Json, file)
      place[path.at(-1) ?? ''] = nonsense[i % nonsense.length]
      const answer = readCommissionFile(file)
      if (!answer.ok) expect(doorSentence(answer.problem).length).toBeLessThan(400)
    }
    expect(places.length).toBeGreaterThan(300)
  })
})

describe('migrations', () => {
  /** A made-up version 0, in which a commission had a name where it now has a title. */
  const fromZero: Migration = {
    to: 1,
    name: 'nameBecomesTitle',
    row: (row) => {
      const { name, ...doc } = row['doc'] as Json
      return { ...row, doc: row['kind'] === 'commission' ? { ...doc, title: name } : row['doc'] }
    },
    change: (change) => ({
      ...change,
      path: (change['path'] as string[]).map((step, i) => (i === 1 && step === 'name' ? 'title' : step)),
    }),
    fact: (fact) => fact,
  }

  const asZero = (file: Json): Json => {
    const older = (doc: Json): Json => {
      const { title, ...rest } = doc
      return { ...rest, name: title }
    }
    const first = file['changes'][0].value as Json
    const changes = [
      { ...file['changes'][0], value: { ...first, schemaVersion: 0, doc: older(first['doc']) } },
      ...(file['changes'] as Json[]).slice(1),
    ]
    return { ...older(file), schemaVersion: 0, changes }
  }

  it('are named, without gaps, and reach the version that is written', () => {
    expect(MIGRATIONS.map((step) => step.to)).toEqual(Array.from({ length: SCHEMA_VERSION - 1 }, (_, i) => i + 2))
    expect(new Set(MIGRATIONS.map((step) => step.name)).size).toBe(MIGRATIONS.length)
  })

  it('bring a file, its log and its shop to the present', () => {
    const file = valueIn(readCommissionFile(asZero(v1()), [fromZero, ...MIGRATIONS]))
    expect(file.title).toBe('Meadow fourteen-fret')
    const { row, changes, facts } = bundleOfFile(file)
    expect(replayLog(changes, facts)).toEqual(row)
  })

  it('are needed for an older file, and leave a present one alone', () => {
    expect(readCommissionFile(asZero(v1()))).toMatchObject({ ok: false, problem: { field: 'schemaVersion' } })
    expect(
      valueIn(migrateBundle({ row: { schemaVersion: SCHEMA_VERSION }, changes: [], facts: [] }, [fromZero])).migrated,
    ).toBe(false)
  })

  it('that stumble over a damaged file make it unreadable, no more', () => {
    const stumbling = {
      ...fromZero,
      row: () => {
        throw new Error('no doc')
      },
    }
    expect(readCommissionFile(asZero(v1()), [stumbling])).toMatchObject({ ok: false, problem: { code: 'unreadable' } })
  })

  it('bring a stored document to the present and say so', () => {
    const { row, changes, facts } = bundleOfFile(valueIn(readCommissionFile(v1())))
    const { title, ...doc } = row.doc
    const stored = {
      row: { ...row, schemaVersion: SCHEMA_VERSION - 1, doc: { ...doc, name: title } },
      changes: changes.slice(1),
      facts,
    }
    const read = valueIn(readBundle('commission', stored, [{ ...fromZero, to: SCHEMA_VERSION }]))
    expect(read.migrated).toBe(true)
    expect(read.bundle.row.doc).toEqual(row.doc)
  })
})

describe('a stored row', () => {
  it('of another kind is not ours, and a damaged one names its field', () => {
    const { row, changes, facts } = beginSteel(countedIds())
    expect(readBundle('shop', { row, changes, facts })).toMatchObject({ ok: false, problem: { code: 'notOurs' } })
    expect(readBundle('commission', { row: { ...row, deletedAt: 7 }, changes, facts })).toMatchObject({
      ok: false,
      problem: { code: 'wrongField', field: 'deletedAt' },
    })
    expect(readBundle('commission', { row, changes: [{ ...changes[0], seq: -1 }], facts })).toMatchObject({
      ok: false,
      problem: { field: 'changes.0.seq' },
    })
  })
})
