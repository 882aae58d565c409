import { useCallback, useMemo, useRef } from 'react'
import type { PlateSide } from '../../../core/boxPlan.ts'
import type { Point } from '../../../core/geometry/point.ts'
import { innerRimOf } from '../../../core/instrument/brace/innerRim.ts'
import { type BraceEndName, type MovedEnds, movedEnd } from '../../../core/instrument/brace/movedEnd.ts'
import { bracesBehind, bracesInOrder, placeBraces } from '../../../core/instrument/brace/placedBrace.ts'
import { acrossPlate, braceCommands, movedBraces } from '../../../drawing/box/bracingFrame.ts'
import { BRACE_END_RANGES } from '../../../record/boxFields.ts'
import { moveBraceEnds } from '../../../record/changes/braces.ts'
import type { DrawingHands, HandsMoved } from '../../../ui/DrawingHandles.tsx'
import { braceName, BRACING_WORDS } from '../../../words/box/bracing.ts'
import { useSheetBench } from '../sheetBench.ts'
import type { BraceInHand } from './braceNames.ts'

const ENDS = ['from', 'to'] as const
const endOf = (id: string): BraceEndName => (id === 'from' ? 'from' : 'to')
/** Keys that follow each other this closely are one stroke of the hand. */
const ONE_STROKE_MS = 1000

/** The braces of a plate under the maker's hand: tapped to choose one, its ends dragged. Only what is moved is placed anew until it is let go. */
export function useBraceHands(
  plate: PlateSide,
  chosenRow: number | null,
  take: (brace: BraceInHand | null) => void,
): DrawingHands {
  const bench = useSheetBench()
  const { plan, computed, readOnly } = bench
  const { handed } = plan
  const { outline, rimSite, bracing } = computed.geometry
  const { placed } = bracing
  // Found once for an outline, however often it is asked.
  const rim = useMemo(() => innerRimOf(outline, rimSite.sideThicknessMm), [outline, rimSite])
  const keyed = useRef<{ readonly what: string; readonly gesture: string; readonly atMs: number } | null>(null)
  const chosen = chosenRow === null ? undefined : placed[chosenRow]

  const nameOf = useCallback(
    (row: number) => {
      const brace = computed.numbers.braces[row]
      return brace === undefined ? '' : braceName(brace.number, brace.kind, brace.half)
    },
    [computed],
  )

  /** What both ends become where one is let go: as they are entered, for the copy that was taken hold of. */
  const endsAt = useCallback(
    (end: BraceEndName, to: Point): MovedEnds | null =>
      chosen === undefined
        ? null
        : movedEnd(plan.bracing.braces[chosen.id]!, chosen, end, acrossPlate(to, plate, handed), rim, BRACE_END_RANGES),
    [chosen, plan, plate, handed, rim],
  )

  /** All copies of the brace in hand, as they are while it is moved. */
  const movedTo = useCallback(
    (id: string, to: Point): HandsMoved => {
      const brace = chosen === undefined ? undefined : plan.bracing.braces[chosen.id]
      const values = endsAt(endOf(id), to)
      if (brace === undefined || chosen === undefined || values === null) return { overlay: [], at: {} }
      const next = { ...brace, from: { ...brace.from, ...values.from }, to: { ...brace.to, ...values.to } }
      const behind = bracesBehind(bracesInOrder({ ...plan.bracing.braces, [chosen.id]: next }), chosen.id)
      const moved = placeBraces(behind, rim).filter((one) => one.id === chosen.id)
      const inHand = moved.find(({ half }) => half === chosen.half) ?? chosen
      const at = (end: BraceEndName) => acrossPlate(inHand[end].point, plate, handed)
      return { overlay: movedBraces(moved, rim, plate, handed), at: { from: at('from'), to: at('to') } }
    },
    [chosen, endsAt, plan, plate, handed, rim],
  )

  const targets = useMemo(
    () =>
      placed.flatMap((brace, row) =>
        brace.plan.plate === plate && brace.lengthMm > 0
          ? [
              {
                id: String(row),
                name: nameOf(row),
                isChosen: row === chosenRow,
                commands: braceCommands(brace, rim, plate, handed),
              },
            ]
          : [],
      ),
    [placed, plate, chosenRow, nameOf, rim, handed],
  )

  const onChoose = useCallback(
    (id: string) => {
      const brace = placed[Number(id)]
      take(brace === undefined || Number(id) === chosenRow ? null : { id: brace.id, half: brace.half })
    },
    [placed, chosenRow, take],
  )

  return {
    targets,
    handles:
      chosen === undefined || chosenRow === null || readOnly
        ? []
        : ENDS.map((end) => ({
            id: end,
            name: BRACING_WORDS.handle(BRACING_WORDS[end], nameOf(chosenRow)),
            at: acrossPlate(chosen[end].point, plate, handed),
          })),
    onChoose,
    movedTo,
    onLetGo: (id, to, keyAtMs) => {
      const end = endOf(id)
      const values = endsAt(end, to)
      if (chosen === undefined || values === null) return
      const what = `${chosen.id} ${end}`
      const before = keyed.current
      const goesOn =
        before !== null && keyAtMs !== null && before.what === what && keyAtMs - before.atMs < ONE_STROKE_MS
      const gesture = goesOn ? before.gesture : bench.newId()
      keyed.current = keyAtMs === null ? null : { what, gesture, atMs: keyAtMs }
      bench.edit(moveBraceEnds(chosen.id, values), gesture)
    },
  }
}
