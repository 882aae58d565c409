import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { type NumberKey, readNumbers } from '../../src/core/numbers.ts'
import { bundleOfFile, readCommissionFile } from '../../src/record/door.ts'
import { boardThrough } from '../../src/record/migrations/oldBoard.ts'
import { theBox } from '../../src/record/migrations/theBox.ts'
import { theNeck } from '../../src/record/migrations/theNeck.ts'
import { planSchema } from '../../src/record/planSchema.ts'
import { takeBack, undoable } from '../../src/record/undo.ts'
import { real } from '../generators/real.ts'
import { countedIds, DEVICE, metaWith, valueIn } from './fixture.ts'

// oxlint-disable-next-line typescript/no-explicit-any -- an older shape, known here alone
type Json = Record<string, any>
const frozen = (version: number): Json =>
  JSON.parse(readFileSync(new URL(`../records/v${version}-commission.json`, import.meta.url), 'utf8')) as Json
const then = JSON.parse(readFileSync(new URL('../tables/versionTwoNumbers.json', import.meta.url), 'utf8')) as {
  readonly numbers: Readonly<Record<string, readonly (number | string)[]>>
}

describe.each([1, 2])('a record of version %i', (version) => {
  const file = valueIn(readCommissionFile(frozen(version)))
  const { numbers, findings } = compute(file.plan)

  it.each(Object.entries(then.numbers))('gives %s as it did', (key, values) => {
    const now = readNumbers(numbers, key as NumberKey)
    expect(now).toHaveLength(values.length)
    values.forEach((value, i) => {
      if (typeof value === 'number') expect(Math.abs(Number(now[i]) - value)).toBeLessThan(1e-9)
      else expect(now[i]).toBe(value)
    })
  })

  it('gets a neck that fits it, and its flat falls as entered', () => {
    expect(findings).toEqual([])
    expect(file.plan.top.flatSlope).toBe('entered')
    expect(file.modelAsTaken?.plan.strings.set).toHaveLength(6)
  })
})

/** Straight edges, laid out anew: where fret n stands before the saddle line, and how wide the board is there. */
const toSaddle = (scaleMm: number, fret: number) => scaleMm / Math.pow(Math.pow(2, 1 / 12), fret)
function backFrom(board: ReturnType<typeof boardThrough>, scaleMm: number, jointFret: number) {
  const widthAtMm = (fromNutMm: number) =>
    board.nutWidthMm + ((board.widthAtTwelfthMm - board.nutWidthMm) / (scaleMm / 2)) * fromNutMm
  const jointMm = scaleMm - toSaddle(scaleMm, jointFret)
  const endMm = scaleMm - toSaddle(scaleMm, board.fretCount) + board.endBeyondLastFretMm
  return { overBodyMm: endMm - jointMm, widthAtJointMm: widthAtMm(jointMm), widthAtEndMm: widthAtMm(endMm) }
}

describe('the board of version 2', () => {
  const scale = { lengthMm: real(250, 1000), jointFret: fc.integer({ min: 8, max: 24 }) }

  it('reaches as far and is as wide again, with as many frets as stand on it', () => {
    // Boards that come from a nut of 30 to 60 mm.
    const old = { overBodyMm: real(1, 300), nutMm: real(30, 60), wideningMm: real(-2, 12) }
    fc.assert(
      fc.property(fc.record({ ...scale, ...old }), ({ lengthMm, jointFret, overBodyMm, nutMm, wideningMm }) => {
        const jointMm = lengthMm - toSaddle(lengthMm, jointFret)
        const widthAtMm = (mm: number) => nutMm + (wideningMm * mm) / (lengthMm / 2)
        const board = {
          overBodyMm,
          widthAtJointMm: widthAtMm(jointMm),
          widthAtEndMm: widthAtMm(jointMm + overBodyMm),
        }
        const found = boardThrough(board, { lengthMm, jointFret })
        const back = backFrom(found, lengthMm, jointFret)
        for (const key of ['overBodyMm', 'widthAtJointMm', 'widthAtEndMm'] as const)
          expect(Math.abs(back[key] - board[key])).toBeLessThan(1e-9)
        const nextMm = toSaddle(lengthMm, found.fretCount) - toSaddle(lengthMm, found.fretCount + 1)
        if (found.fretCount < 36) expect(found.endBeyondLastFretMm).toBeLessThan(nextMm)
      }),
    )
  })

  it('that stops at the joint goes parallel, and so hides what it hid', () => {
    expect(
      boardThrough({ overBodyMm: 0, widthAtJointMm: 60, widthAtEndMm: 54 }, { lengthMm: 650, jointFret: 12 }),
    ).toEqual({ nutWidthMm: 54, widthAtTwelfthMm: 54, endBeyondLastFretMm: 0, fretCount: 12 })
  })

  it('that would have no nut keeps its end, whatever else', () => {
    const board = boardThrough(
      { overBodyMm: 20, widthAtJointMm: 50, widthAtEndMm: 60 },
      { lengthMm: 650, jointFret: 12 },
    )
    expect(board.nutWidthMm).toBe(20)
    expect(backFrom(board, 650, 12).widthAtEndMm).toBeCloseTo(60, 9)
  })

  it('of any kind version 2 took is one that this version takes, in any family', () => {
    const anyOld = { overBodyMm: real(0, 300), widthAtJointMm: real(25, 120), widthAtEndMm: real(25, 130) }
    const { plan } = frozen(2)
    fc.assert(
      fc.property(
        fc.record(anyOld),
        fc.record(scale),
        fc.constantFrom('steelString', 'nylonString', 'small', null),
        fc.record({ widthMm: real(15, 200), thicknessMm: real(5, 120) }),
        real(20, 250),
        fc.option(real(120, 800)),
        (board, itsScale, family, block, depthAtNeckMm, lengthMm) => {
          const old = {
            ...plan,
            board,
            scale: itsScale,
            blocks: { ...plan.blocks, neck: block },
            rim: { ...plan.rim, depthAtNeckMm },
            outline: { ...plan.outline, lengthMm },
          }
          const row = theBox.row(theNeck.row({ kind: 'model', doc: { family, plan: old } }))
          expect(planSchema.safeParse((row['doc'] as Json)['plan'])).toMatchObject({ success: true })
        },
      ),
    )
  })

  it.each([
    ['a board with nothing in it', (f: Json) => void (f['plan'].board = {}), 'plan.board'],
    ['a reach beyond its range', (f: Json) => void (f['plan'].board.overBodyMm = 900), 'plan.'],
    ['a width in words', (f: Json) => void (f['plan'].board.widthAtEndMm = 'wide'), 'plan.'],
    ['no scale', (f: Json) => void (f['plan'].scale = 7), 'plan.scale'],
    ['a scale beyond its range', (f: Json) => void (f['plan'].scale.lengthMm = 5000), 'plan.scale.lengthMm'],
    ['a joint at no fret', (f: Json) => void (f['plan'].scale.jointFret = null), 'plan.scale.jointFret'],
  ])('with %s is refused, not mended', (_, damage, field) => {
    const file = frozen(2)
    damage(file)
    const answer = readCommissionFile(file)
    if (answer.ok) throw new Error('was taken')
    expect(answer.problem.field?.startsWith(field)).toBe(true)
  })
})

describe('the log of version 2', () => {
  const entry = (seq: number, gesture: string, path: string, value: unknown, previous: unknown): Json => ({
    id: `eeeeeeee-0000-4000-8000-${String(seq).padStart(12, '0')}`,
    docId: frozen(2)['id'],
    deviceId: DEVICE,
    seq,
    at: '2026-11-20T10:00:00.000Z',
    gesture: `${gesture.repeat(8)}-0000-4000-8000-000000000001`,
    path: ['doc', ...path.split('.')],
    value,
    previous,
    after: null,
    undoes: null,
  })
  const withEntries = (entries: readonly Json[], mend: (plan: Json) => void) => {
    const file = frozen(2)
    mend(file['plan'])
    file['changes'].push(...entries)
    return bundleOfFile(valueIn(readCommissionFile(file)))
  }

  it('keeps a change of what is gone in its place, without values, and undo passes over it', () => {
    const { row, changes, facts } = withEntries(
      [
        entry(1001, 'b', 'plan.rim.depthAtTailMm', 104, 106),
        entry(1002, 'c', 'plan.board.overBodyMm', 88, 90.15),
        entry(1003, 'd', 'plan.board.widthAtEndMm', 60, 59.28),
      ],
      (plan) => {
        plan['rim'].depthAtTailMm = 104
        plan['board'] = { ...plan['board'], overBodyMm: 88, widthAtEndMm: 60 }
      },
    )
    const kept = changes.filter(({ path }) => path.includes('board'))
    expect(kept.map((change) => [change.seq, 'value' in change, 'previous' in change])).toEqual([
      [1002, false, false],
      [1003, false, false],
    ])
    expect(compute(row.doc.plan).numbers.board.overBodyMm).toBeCloseTo(88, 9)
    const { undo } = undoable(changes, facts)
    expect(undo?.fields).toEqual(['plan.rim.depthAtTailMm'])
    const back = valueIn(takeBack(row, changes, facts, undo?.gesture ?? '', metaWith(countedIds('f'))))
    expect(back.row.doc.plan).toEqual({ ...row.doc.plan, rim: { ...row.doc.plan.rim, depthAtTailMm: 106 } })
    const gone = kept[0]?.gesture ?? ''
    expect(valueIn(takeBack(row, changes, facts, gone, metaWith(countedIds('f')))).row.doc).toEqual(row.doc)
  })

  it.each<[string, (plan: Json) => Json]>([
    ['plan.board', (plan) => ({ ...plan['board'], overBodyMm: 80 })],
    ['plan.scale', (plan) => ({ ...plan['scale'], lengthMm: 650 })],
    ['plan.top', (plan) => ({ ...plan['top'], flatSlopeDeg: 1 })],
    ['plan', (plan) => ({ ...plan, rim: { ...plan['rim'], depthAtTailMm: 100 } })],
  ])('widens what was set whole: %s', (path, before) => {
    const part = path.split('.')[1]
    const now = (plan: Json): Json => (part === undefined ? plan : (plan[part] as Json))
    const { plan } = frozen(2)
    const { row, changes, facts } = withEntries([entry(1001, 'b', path, now(plan), before(plan))], () => {})
    const { undo } = undoable(changes, facts)
    expect(undo?.fields).toEqual([path])
    const back = valueIn(takeBack(row, changes, facts, undo?.gesture ?? '', metaWith(countedIds('f'))))
    expect(back.row.doc.plan).not.toEqual(row.doc.plan)
    const redone = valueIn(
      takeBack(
        back.row,
        [...changes, ...back.changes],
        facts,
        back.changes[0]?.gesture ?? '',
        metaWith(countedIds('e')),
      ),
    )
    expect(redone.row.doc.plan).toEqual(row.doc.plan)
  })

  it('widens a model taken, with the neck of the instrument’s family', () => {
    const file = frozen(2)
    file['family'] = 'nylonString'
    file['changes'].push(entry(1001, 'b', 'modelAsTaken', file['modelAsTaken'], null))
    const { row, changes } = bundleOfFile(valueIn(readCommissionFile(file)))
    expect(changes.at(-1)?.value).toEqual(row.doc.modelAsTaken)
    expect(row.doc.modelAsTaken?.plan.bridge.holds).toBe('tie')
  })
})
