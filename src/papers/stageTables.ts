import { aboutNumber } from '../core/catalogue.ts'
import type { RimPlace } from '../core/instrument/rim.ts'
import type { NumberKey } from '../core/numbers.ts'
import { formatNote } from '../format/formatNote.ts'
import { getsBox } from '../record/patterns/figuresOfStage.ts'
import type { StageKey } from '../record/patterns/stages.ts'
import { contourPiece } from './blocks/contourTable.ts'
import { numbersPiece } from './blocks/numbersTable.ts'
import { ringsPieces } from './blocks/ringsTable.ts'
import { type NamedRows, rowsPieces } from './blocks/rowsTable.ts'
import { type StationRun, stationsPiece } from './blocks/stationTable.ts'
import type { Piece } from './flow.ts'
import type { Column } from './pen.ts'
import { gluedAt } from './gluedAt.ts'
import { groupNumbers, type NumberGroup } from './stageGroups.ts'
import { buildingOrder, stageFigures } from './stageFigures.ts'
import { stageNumbers } from './stageNumbers.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'
import { isAboutPlate } from './taperNote.ts'

/** The tables of a stage in the order the hand reaches its numbers. A list without rows has none. */
export function stageTables(order: StageSheetOrder, stage: StageOnSheet, column: Column): readonly Piece[] {
  const all = stageFigures(order, stage).numbers
  const keys = stageNumbers(stage.key, all, order.doc.plan.rim.method, order.computed.numbers)
  return groupNumbers(keys).flatMap((group) => tablesOf(order, group, stage, column))
}

function tablesOf(order: StageSheetOrder, group: NumberGroup, stage: StageOnSheet, column: Column): readonly Piece[] {
  const { list, keys } = group
  if (list === 'rosette.rings') return ringsPieces(order, keys, stage, column)
  if (list === 'rim' || list === 'trebleRim')
    return stationRuns(order, list).flatMap((run) => stationsPiece(order, keys, run, stage, column) ?? [])
  const named = namedRows(order, group, stage)
  if (named !== null) return rowsPieces(order, named, stage, column)
  const lookUp = list.endsWith('.contour') || list.endsWith('.flank')
  const piece = (lookUp ? contourPiece : numbersPiece)(order, keys, stage, column)
  return piece === null ? [] : [piece]
}

/** The stations of a list as they are printed: one run for both sides, or one for each piece of side wood. */
export function stationRuns(order: StageSheetOrder, list: 'rim' | 'trebleRim'): readonly StationRun[] {
  const { rim, trebleRim } = order.computed.numbers
  const { sides, pieceOfSide } = order.words.paper
  if (list === 'rim') {
    const rows = rim.map((_, row) => row)
    const isMirrored = trebleRim.length === 0
    return [{ title: isMirrored ? null : sides.bass, rows, boxes: isMirrored ? 2 : 1, isLaterPiece: false }]
  }
  const blanks = [...new Set(trebleRim.map(({ blank }) => blank))]
  return blanks.map((blank) => ({
    title: blanks.length === 1 ? sides.treble : pieceOfSide(sides.treble, blank),
    rows: trebleRim.flatMap((row, i) => (row.blank === blank ? [i] : [])),
    boxes: 1,
    isLaterPiece: blank !== blanks[0],
  }))
}

/** Strings from the bass, by the note they are tuned to. The trade counts them from the treble: no count of rows stands beside it. */
const stringNames = ({ doc }: StageSheetOrder): string[] => doc.plan.strings.set.map(({ note }) => formatNote(note))

/** A list whose rows have names; null where it is another kind of list. */
export function namedRows(order: StageSheetOrder, { list, keys }: NumberGroup, stage: StageOnSheet): NamedRows | null {
  const { numbers } = order.computed
  const { paper } = order.words
  const { sides, columns } = paper
  const pattern = stageFigures(order, stage)
  const boxesUpTo =
    (most: 1 | 2) =>
    (key: NumberKey): 0 | 1 | 2 =>
      getsBox(pattern, key) ? most : 0
  /** A length round the rim is read on both halves, an angle on one; where the halves differ, each has its own table. */
  const places = (title: string | null, rows: readonly { readonly place: RimPlace }[]): NamedRows => ({
    title,
    head: columns.place,
    names: rows.map(({ place }) => paper.places[place]),
    keys,
    boxesOf: (key) => boxesUpTo(title !== null || aboutNumber(key).quantity === 'angle' ? 1 : 2)(key),
  })
  const braces = (title: string | null, count: number): NamedRows => ({
    title,
    head: columns.brace,
    names: Array.from({ length: count }, (_, i) => String(i + 1)),
    keys,
    boxesOf: boxesUpTo(title === null ? 2 : 1),
  })
  const bassTitle = numbers.trebleRim.length === 0 ? null : sides.bass
  switch (list) {
    case 'places':
      return places(bassTitle, numbers.places)
    case 'treblePlaces':
      return places(sides.treble, numbers.treblePlaces)
    case 'sideBraces':
      return braces(bassTitle, numbers.sideBraces.length)
    case 'trebleBraces':
      return braces(sides.treble, numbers.trebleBraces.length)
    case 'braces':
    case 'braceArch':
    case 'braceCrossings':
      return ofPlate(order, list, { keys, boxesOf: boxesUpTo(1) }, stage.key)
    case 'jointStrip':
      return {
        title: null,
        head: columns.piece,
        names: numbers.jointStrip.map((_, i) => String(i + 1)),
        keys,
        boxesOf: boxesUpTo(1),
      }
    case 'edgePlaces':
      return places(bassTitle, numbers.edgePlaces)
    case 'trebleEdgePlaces':
      return places(sides.treble, numbers.trebleEdgePlaces)
    case 'edgeStrips':
      return {
        title: null,
        head: columns.piece,
        names: numbers.edgeStrips.map(({ half, plate }) => paper.strip(sides[half], plate)),
        keys,
        boxesOf: boxesUpTo(1),
      }
    case 'blanks': {
      const treble = numbers.blanks.length - 1
      const names = numbers.blanks.map((_, i) =>
        i === 0 ? sides.bass : treble === 1 ? sides.treble : paper.pieceOfSide(sides.treble, i),
      )
      return { title: null, head: columns.blank, names, keys, boxesOf: boxesUpTo(1) }
    }
    case 'frets':
      return {
        title: null,
        head: columns.fret,
        names: numbers.frets.map(({ number }) => String(number)),
        keys,
        boxesOf: boxesUpTo(1),
      }
    case 'markers':
      return {
        title: null,
        head: columns.fret,
        names: numbers.markers.map(({ fret }) => String(fret)),
        keys,
        boxesOf: boxesUpTo(1),
      }
    case 'strings':
    case 'pins':
    case 'tuners':
      return { title: null, head: columns.string, names: stringNames(order), keys, boxesOf: boxesUpTo(1) }
    case 'neck.bolts':
      return {
        title: null,
        head: columns.bolt,
        names: numbers.neck.bolts.map((_, i) => String(i + 1)),
        keys,
        boxesOf: boxesUpTo(1),
      }
    case 'neckSet.gaps':
      return {
        title: null,
        head: columns.place,
        names: numbers.neckSet.gaps.map((_, i, all) =>
          i === all.length - 1 ? paper.boardEnd : paper.fret(order.doc.plan.scale.jointFret + i),
        ),
        keys,
        boxesOf: boxesUpTo(1),
      }
    default:
      return null
  }
}

/** The braces or the crossings of a stage's plate, under the numbers of the braces; the eighths of those that no one radius fits. */
function ofPlate(
  order: StageSheetOrder,
  list: 'braces' | 'braceArch' | 'braceCrossings',
  columns: Pick<NamedRows, 'keys' | 'boxesOf'>,
  stage: StageKey,
): NamedRows {
  const { computed, words } = order
  const isGlued = gluedAt(buildingOrder(order), stage)
  const { braces, braceArch, braceCrossings } = computed.numbers
  const { paper } = words
  const onPlate = (number: number) => {
    const plate = braces[number - 1]?.plate
    return plate !== undefined && isAboutPlate(stage, plate)
  }
  const rows = {
    braces: braces.map(({ number, kind, half }) => ({ number, name: paper.brace(number, kind, half) })),
    braceArch: braceArch.map(({ number }, i) => ({
      number,
      name: paper.eighth(number, i - braceArch.findIndex((row) => row.number === number)),
    })),
    braceCrossings: braceCrossings.map(({ number, otherNumber }) => ({
      number,
      name: paper.crossing(number, otherNumber),
    })),
  }[list]
  const isShown = (number: number) =>
    onPlate(number) &&
    (list !== 'braceArch' || braces[number - 1]?.undersideRadiusMm === 'none') &&
    (list !== 'braces' || isGlued(braces[number - 1]?.kind))
  const at = rows.flatMap(({ number }, i) => (isShown(number) ? [i] : []))
  return { title: null, head: paper.columns.brace, names: at.map((i) => rows[i]?.name ?? ''), at, ...columns }
}
