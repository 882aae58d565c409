import { useCallback, useMemo, useState } from 'react'
import { aboutNumber } from '../../core/catalogue.ts'
import type { NumberRef } from '../../drawing/drawing.ts'
import { todayHere } from '../../device/today.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { shopTypedUnit, type TypedUnit, typedUnits } from '../../format/typedReading.ts'
import { measured } from '../../record/bench/measured.ts'
import { readAt } from '../../record/bench/readAt.ts'
import type { CommissionDoc } from '../../record/commission.ts'
import type { StageDone } from '../../record/facts.ts'
import { gaugeToday } from '../../state/gaugeStore.ts'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import { TOOL_WORDS } from '../../words/bodySheets.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { rowKey } from '../builtTo.ts'
import { useCommission, useGauges, useShop, useWorkshop } from '../workshop.ts'
import { BenchDrawing } from './BenchDrawing.tsx'
import type { StageKey } from '../../record/patterns/stages.ts'
import { BenchFoot } from './BenchFoot.tsx'
import { drawingsFor } from './drawingsFor.ts'
import { keepSide, keepSpot, keepUnit, keptSide, keptSpot, keptUnit } from './benchMemory.ts'
import { GaugePanel } from './GaugePanel.tsx'
import { LastReadStrip } from './LastReadStrip.tsx'
import { NumberInHand } from './NumberInHand.tsx'
import { NumbersPanel } from './NumbersPanel.tsx'
import { Pad } from './Pad.tsx'
import { usePadText } from './padText.ts'
import { fullName, readingPlace, rowWord } from './spotPlace.ts'
import { nextBox, type Side, sideAt, type Spot, spotsOf, valueAt } from './spots.ts'
import { StageLines } from './StageLines.tsx'
import type { StageInHand } from './stageInHand.ts'
import { useInHand } from './useInHand.ts'
import { usePadKeys } from './usePadKeys.ts'
import { type LastRead, useStoreReading } from './useStoreReading.ts'

/** What stands beside the number. */
type Face = 'drawing' | 'pad' | 'lines' | 'numbers' | 'gauge'

interface Props {
  readonly doc: CommissionDoc
  readonly stage: StageInHand
  /** The stages of the instrument. */
  readonly present: readonly StageKey[]
  readonly done: StageDone | null
  readonly onPrevious: (() => void) | null
  readonly onNext: (() => void) | null
}

/** One stage on the bench: the number in hand on one half, on the other its drawing, the pad, or what there is to do. */
export function StageAtHand({ doc, stage, present, done, onPrevious, onNext }: Props) {
  const { askedOf } = useWorkshop()
  const computed = useCommission((state) => state.computed)
  const built = useCommission((state) => state.builtDoc)
  const facts = useCommission((state) => state.facts)
  const isLocked = useCommission((state) => state.readOnly !== null)
  const units = useShop((state) => state.shop.units)
  const readings = useMemo(() => measured(facts), [facts])
  const plan = built?.plan ?? doc.plan
  const numbers = computed?.numbers ?? null
  const spots = useMemo(() => (numbers === null ? [] : spotsOf(stage, numbers)), [stage, numbers])
  const [asked, show] = useState<Face>('drawing')
  const [at, setAt] = useState(() => keptSpot(stage.id))
  const [sideInHand, setSide] = useState<Side>(keptSide)
  const [last, setLast] = useState<LastRead | null>(null)
  const spot = spots[Math.min(at, spots.length - 1)] ?? null
  const side = spot === null ? 'whole' : sideAt(spot, sideInHand)
  const names = spot === null ? [] : drawingsFor(stage, spot.key)
  const rest: Face = names.length > 0 ? 'drawing' : 'lines'
  const hand = useInHand(stage, spot, side, done)
  const typed = usePadText()
  const quantity = hand?.quantity ?? 'bodyLength'
  const [unitInHand, setUnit] = useState<TypedUnit | null>(null)
  const unit = unitFor(quantity, [unitInHand, keptUnit(quantity), shopTypedUnit(quantity, units)])
  const { store, problem, forget } = useStoreReading(stage.id)
  const tool = hand?.tool ?? null
  const gauge = useGauges((state) => (tool === null ? null : gaugeToday(state, tool, todayHere())))
  const canRead = hand !== null && hand.spot.isRead && !isLocked
  // A number that is only looked up has no pad: it stays open for the next that is read.
  const isShut = (asked === 'pad' || asked === 'gauge') && !canRead
  const face: Face = asked === 'drawing' || isShut ? rest : asked

  const take = (next: number): void => {
    const to = Math.min(Math.max(next, 0), spots.length - 1)
    setAt(to)
    keepSpot(stage.id, to)
    forget()
  }
  const chooseSide = (next: Side): void => {
    setSide(next)
    keepSide(next)
  }
  const isOpen = (one: Spot): boolean =>
    numbers !== null && readAt(readings, readingPlace(one, sideAt(one, sideInHand), numbers, plan)) === null
  const keep = (): void => {
    if (hand === null || !canRead) return
    const stored = store(typed.now(), unit, hand, at)
    if (stored === null) return show('pad')
    typed.set('')
    setLast(stored)
    take(nextBox(spots, at, isOpen))
  }
  const takeFigure = useCallback(
    (ref: NumberRef) => {
      const to = spots.findIndex(({ key, row }) => key === ref.key && (row ?? null) === (ref.row ?? null))
      if (to < 0) return
      setAt(to)
      keepSpot(stage.id, to)
    },
    [spots, stage.id],
  )
  const nameOf = useCallback(
    ({ key, row }: NumberRef) => {
      const word = numbers === null ? '' : rowWord({ key, row, sides: ['whole'], isRead: false }, numbers, plan)
      return fullName(NUMBER_NAMES[key], word, 'whole')
    },
    [numbers, plan],
  )
  usePadKeys(canRead, {
    typed,
    onTyped: () => {
      show('pad')
      if (problem !== null) forget()
    },
    onStore: keep,
    onClear: () => {
      if (typed.now() === '') show('drawing')
      typed.set('')
      forget()
    },
  })

  const foot = (lines: Parameters<typeof BenchFoot>[0]['lines']) => (
    <BenchFoot stage={stage} present={present} done={done} onPrevious={onPrevious} onNext={onNext} lines={lines} />
  )
  if (hand === null || numbers === null || spot === null) {
    return (
      <>
        <div className="bench-body" data-numbers="none">
          <StageLines stage={stage} isWhole />
        </div>
        {foot(null)}
      </>
    )
  }
  const askedValue = (one: Spot) =>
    done?.builtTo[rowKey(one.key, one.row ?? 0)] ?? valueAt(askedOf(one.key)?.computed.numbers ?? numbers, one)
  const toggle = (next: Face) => (): void => show(face === next ? 'drawing' : next)
  return (
    <>
      <div className="bench-body" data-face={face}>
        <section className="bench-hand" aria-label={words.inHand}>
          <NumberInHand hand={hand} units={units} onRead={canRead ? toggle('pad') : null} isPadOpen={face === 'pad'} />
          {last !== null && (
            <LastReadStrip last={last} units={units} onReturn={() => take(last.at)} onTakenBack={() => setLast(null)} />
          )}
          <div className="hand-steps">
            <button className="hand-step" type="button" disabled={at <= 0} onClick={() => take(at - 1)}>
              <span aria-hidden="true">{'\u2190'}</span>
              <span>{words.previousNumber}</span>
            </button>
            <button
              className="hand-list"
              type="button"
              aria-label={words.chooseNumber(at + 1, spots.length)}
              aria-expanded={face === 'numbers'}
              onClick={toggle('numbers')}
            >
              {words.place(at + 1, spots.length)}
            </button>
            <button className="hand-step" type="button" disabled={at >= spots.length - 1} onClick={() => take(at + 1)}>
              <span>{words.nextNumber}</span>
              <span aria-hidden="true">{'\u2192'}</span>
            </button>
          </div>
        </section>
        <div className="bench-beside">
          {face === 'drawing' && (
            <BenchDrawing
              names={names}
              computed={hand.computed}
              plan={hand.plan}
              units={units}
              lit={{ key: spot.key, row: spot.row }}
              onTap={takeFigure}
              nameOf={nameOf}
            />
          )}
          {face === 'lines' && <StageLines stage={stage} isWhole={false} />}
          {face === 'numbers' && (
            <NumbersPanel
              at={at}
              lines={spots.map((one) => ({
                called: fullName(NUMBER_NAMES[one.key], rowWord(one, numbers, plan), 'whole'),
                value: figureText(formatQuantity(askedValue(one), aboutNumber(one.key).quantity, units)),
                isRead: one.isRead && !isOpen(one),
              }))}
              onChoose={(next) => {
                take(next)
                show('drawing')
              }}
            />
          )}
          {face === 'gauge' && tool !== null && <GaugePanel tool={tool} onDone={() => show('pad')} />}
          {face === 'pad' && (
            <Pad
              hand={hand}
              units={units}
              typed={typed}
              unit={unit}
              problem={problem}
              gauge={
                tool === null
                  ? null
                  : { text: gauge || TOOL_WORDS[tool], isAsked: gauge === null, onChange: () => show('gauge') }
              }
              onUnit={(next) => {
                setUnit(next)
                keepUnit(quantity, next)
              }}
              onSide={chooseSide}
              onStore={keep}
              onTyped={forget}
              onClose={() => show('drawing')}
            />
          )}
        </div>
      </div>
      {foot(rest === 'lines' && face === 'lines' ? null : { isShown: face === 'lines', onToggle: toggle('lines') })}
    </>
  )
}

/** The first unit in which a number of this kind can be read. */
function unitFor(quantity: Parameters<typeof typedUnits>[0], wanted: readonly (TypedUnit | null)[]): TypedUnit {
  const allowed = typedUnits(quantity)
  return wanted.find((one): one is TypedUnit => one !== null && allowed.includes(one)) ?? 'mm'
}
