import type { Numbers } from '../../core/numbers.ts'
import type { Plan } from '../../core/plan.ts'
import type { NumberListName } from '../../words/names/lists.ts'
import { BRACING_WORDS, braceName } from '../../words/box/bracing.ts'
import { EDGES_WORDS } from '../../words/box/edges.ts'
import { FRETS_WORDS, NECK_SET_WORDS } from '../../words/neck/sheets.ts'
import { PLACE_WORDS } from '../../words/measuring.ts'
import { stringNames } from './neck/stringNames.ts'

/** Stations are counted from the tail, points of a face from its middle: the first is 0. */
const STARTS_AT_NOUGHT = /^(rim|trebleRim)$|contour$|flank$/u

/** What the rows of a list are called: by place, fret or string where they are one of these, else by their count. */
export function rowNames(of: NumberListName, count: number, numbers: Numbers, plan: Plan): readonly string[] {
  switch (of) {
    case 'places':
    case 'treblePlaces':
    case 'edgePlaces':
    case 'trebleEdgePlaces':
      return numbers[of].map(({ place }) => PLACE_WORDS[place])
    case 'braces':
      return numbers.braces.map(({ number, kind, half }) => braceName(number, kind, half))
    case 'braceArch':
      return numbers.braceArch.map(({ number }) => String(number))
    case 'braceCrossings':
      return numbers.braceCrossings.map(({ number, otherNumber }) => BRACING_WORDS.crossing(number, otherNumber))
    case 'edgeStrips':
      return numbers.edgeStrips.map(({ half, plate }) =>
        EDGES_WORDS.strip(EDGES_WORDS.half[half], EDGES_WORDS.plate[plate]),
      )
    case 'frets':
      return numbers.frets.map(({ number }) => String(number))
    case 'markers':
      return numbers.markers.map(({ fret }) => String(fret))
    case 'strings':
    case 'pins':
    case 'tuners':
      return stringNames(plan.strings.set)
    case 'neckSet.gaps':
      return gapNames(count, plan.scale.jointFret)
    case 'neckSet.changes':
      return numbers.neckSet.changes.map(({ what }) => NECK_SET_WORDS.what[what])
    default: {
      const first = STARTS_AT_NOUGHT.test(of) ? 0 : 1
      return Array.from({ length: count }, (_, i) => String(first + i))
    }
  }
}

/** Places under the board: the frets from the joint on, then its end. */
export const gapNames = (count: number, jointFret: number): readonly string[] =>
  Array.from({ length: count }, (_, i) => (i === count - 1 ? NECK_SET_WORDS.end : FRETS_WORDS.fretHere(jointFret + i)))
