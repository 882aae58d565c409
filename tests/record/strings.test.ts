import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { StringPlan } from '../../src/core/neckPlan.ts'
import { setOtherNotes, setStrings } from '../../src/record/changes/strings.ts'
import { editDocument } from '../../src/record/edit.ts'
import { string as stringSchema } from '../../src/record/neckSchema.ts'
import { STRING_SET_KEYS, STRING_SETS, type StringSetKey } from '../../src/record/patterns/stringSets.ts'
import { retuned, TUNING_KEYS } from '../../src/record/patterns/tunings.ts'
import { rangeOf } from '../../src/record/problem.ts'
import { takeBack, undoable } from '../../src/record/undo.ts'
import { beginSteel, countedIds, edited, metaWith, valueIn } from './fixture.ts'

describe('the strings of an instrument', () => {
  const set = STRING_SETS.twelveString

  it('are set whole as one change, and taken back as one', () => {
    const newId = countedIds()
    const begun = beginSteel(newId)
    const { row, changes } = edited(begun, setStrings(set), metaWith(newId))
    expect(row.doc.plan.strings.set).toEqual(set)
    expect(changes.slice(1).map(({ path }) => path)).toEqual([['doc', 'plan', 'strings', 'set']])
    const gesture = undoable(changes, []).undo?.gesture ?? ''
    expect(valueIn(takeBack(row, changes, [], gesture, metaWith(newId))).row.doc).toEqual(begun.row.doc)
  })

  it('of another count drop the notes to compare with, and keep them else', () => {
    const newId = countedIds()
    const notes = [38, 45, 50, 55, 59, 64]
    const tuned = edited(beginSteel(newId), setOtherNotes(notes), metaWith(newId))
    const six = edited(tuned, setStrings(STRING_SETS.steelMedium), metaWith(newId))
    expect(six.row.doc.plan.strings.otherNotes).toEqual(notes)
    const twelve = edited(six, setStrings(set), metaWith(newId))
    expect(twelve.row.doc.plan.strings.otherNotes).toBeNull()
  })

  it('carry another tuning beside, of as many notes as it has, or none', () => {
    const newId = countedIds()
    let bundle = beginSteel(newId)
    for (const notes of [[38, 45, 50], [], null, [38, 45, 50, 55, 59, 64, 69]]) {
      bundle = edited(bundle, setOtherNotes(notes), metaWith(newId))
      expect(bundle.row.doc.plan.strings.otherNotes).toEqual(notes)
      expect(compute(bundle.row.doc.plan).numbers.strings).toHaveLength(6)
    }
    expect(bundle.changes.at(-1)?.path).toEqual(['doc', 'plan', 'strings', 'otherNotes'])
  })

  it.each<[string, readonly StringPlan[], string]>([
    ['none at all', [], 'plan.strings.set'],
    ['one as thick as a finger', [{ ...set[0]!, diameterMm: 12 }], 'plan.strings.set.0.diameterMm'],
    ['one between two notes', [{ ...set[0]!, note: 40.5 }], 'plan.strings.set.0.note'],
    ['more than any has', Array.from({ length: 25 }, () => set[0]!), 'plan.strings.set'],
  ])('are refused with %s, naming the place', (_, strings, field) => {
    const { row, changes } = beginSteel(countedIds())
    expect(editDocument(row, changes, setStrings(strings), metaWith(countedIds('b')))).toMatchObject({
      ok: false,
      problem: { field },
    })
  })

  it('and markers and bolts have ranges of their own inside what is set whole', () => {
    expect(rangeOf('plan.strings.set.3.massGPerM')).toMatchObject({ type: 'plain', unit: 'gramsPerMetre', open: true })
    expect(rangeOf('plan.strings.otherNotes.2')).toMatchObject({ type: 'count' })
    expect(rangeOf('plan.board.markersAt.0')).toMatchObject({ type: 'count', max: 36 })
    expect(rangeOf('modelAsTaken.plan.neck.boltsAtMm.1')).toMatchObject({ type: 'length', minMm: 3 })
  })
})

/** Scale a set is usual on, mm, and what its strings pull there one by one, N: round figures of the trade, from memory. */
const USUAL: Readonly<Record<StringSetKey, readonly [scaleMm: number, least: number, most: number]>> = {
  steelLight: [645, 95, 140],
  steelMedium: [645, 105, 165],
  twelveString: [645, 60, 135],
  baritone: [695, 85, 170],
  steelSeven: [645, 85, 140],
  nylon: [650, 50, 85],
  nylonSeven: [650, 50, 85],
  nylonEight: [650, 50, 85],
  ukuleleTenor: [432, 30, 60],
  ukuleleLowG: [432, 30, 60],
}
const DENSITY = { steel: 7850, nylon: 1060, fluorocarbon: 1780, woundOnSteel: Number.NaN, woundOnNylon: Number.NaN }

describe('the usual sets of strings', () => {
  it.each(STRING_SET_KEYS)('%s are strings a record takes, each pulling as such strings do', (key) => {
    const [scaleMm, least, most] = USUAL[key]
    for (const one of STRING_SETS[key]) {
      expect(stringSchema.safeParse(one)).toMatchObject({ success: true })
      // Mersenne: f = sqrt(T / mu) / 2 S; equal temperament from A4 = 440 Hz.
      const plainKgPerM = DENSITY[one.material] * Math.PI * (one.diameterMm / 2000) ** 2
      const kgPerM = one.massGPerM === null ? plainKgPerM : one.massGPerM / 1000
      const hz = 440 * Math.pow(2, (one.note - 69) / 12)
      const pullN = kgPerM * (2 * (scaleMm / 1000) * hz) ** 2
      expect(pullN).toBeGreaterThan(least)
      expect(pullN).toBeLessThan(most)
    }
  })

  it('have wound strings lighter than solid bronze as thick, and heavier than their cores', () => {
    const kgPerM = (mm: number, density: number) => (density * Math.PI * mm * mm) / 4000
    for (const { diameterMm, coreMm, massGPerM, material } of STRING_SET_KEYS.flatMap((key) => STRING_SETS[key])) {
      if (!material.startsWith('wound')) continue
      expect(massGPerM).toBeLessThan(kgPerM(diameterMm, 8900))
      expect(massGPerM).toBeGreaterThan(kgPerM(coreMm ?? 99, material === 'woundOnSteel' ? 7850 : 1060))
    }
  })

  it('pair each course of twelve with its octave, and the last two with themselves', () => {
    const courses = Array.from({ length: 6 }, (_, i) => STRING_SETS.twelveString.slice(2 * i, 2 * i + 2))
    expect(courses.map(([first, second]) => first!.note - second!.note)).toEqual([12, 12, 12, 12, 0, 0])
    expect(courses.map((course) => course.map(({ pairedWithNext }) => pairedWithNext))).toEqual(
      courses.map(() => [true, false]),
    )
  })
})

/** Spelled as players say them: a letter, a sharp, the octave with middle C as C4. */
const STEPS = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B']
const spelled = (notes: readonly number[] | null) =>
  notes?.map((note) => `${STEPS[note % 12]}${Math.floor(note / 12) - 1}`).join(' ') ?? null

describe('other tunings', () => {
  it.each([
    ['halfStepDown', 'D#2 G#2 C#3 F#3 A#3 D#4'],
    ['wholeStepDown', 'D2 G2 C3 F3 A3 D4'],
    ['halfStepUp', 'F2 A#2 D#3 G#3 C4 F4'],
    ['fourthDown', 'B1 E2 A2 D3 F#3 B3'],
    ['dropD', 'D2 A2 D3 G3 B3 E4'],
    ['openG', 'D2 G2 D3 G3 B3 D4'],
    ['openD', 'D2 A2 D3 F#3 A3 D4'],
    ['dadgad', 'D2 A2 D3 G3 A3 D4'],
  ] as const)('%s is %s on six strings', (key, notes) => {
    expect(TUNING_KEYS).toContain(key)
    expect(spelled(retuned(STRING_SETS.steelLight, key))).toBe(notes)
  })

  it('move both strings of a course, and are none for another count of courses', () => {
    expect(spelled(retuned(STRING_SETS.twelveString, 'dadgad'))).toBe('D3 D2 A3 A2 D4 D3 G4 G3 A3 A3 D4 D4')
    expect(retuned(STRING_SETS.ukuleleTenor, 'openG')).toBeNull()
    expect(spelled(retuned(STRING_SETS.ukuleleTenor, 'wholeStepDown'))).toBe('F4 A#3 D4 G4')
  })
})
