import type { ShopUnits } from '../../core/quantity.ts'
import { figureText } from '../../format/figure.ts'
import { formatReading, hasFractions, parseReading, type TypedUnit, typedUnits } from '../../format/typedReading.ts'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import type { PadText } from './padText.ts'
import type { Side } from './spots.ts'
import type { InHand } from './useInHand.ts'
import type { PadProblem } from './useStoreReading.ts'
import './pad.css'

const ROWS = [
  ['7', '8', '9'],
  ['4', '5', '6'],
  ['1', '2', '3'],
] as const
const DENOMINATORS = [2, 4, 8, 16, 32, 64] as const

interface Props {
  readonly hand: InHand
  readonly units: ShopUnits
  readonly typed: PadText
  readonly unit: TypedUnit
  readonly problem: PadProblem | null
  readonly gauge: { readonly text: string; readonly isAsked: boolean; readonly onChange: () => void } | null
  readonly onUnit: (unit: TypedUnit) => void
  readonly onSide: (side: Side) => void
  readonly onStore: () => void
  readonly onTyped: () => void
  readonly onClose: () => void
}

/** Figures a thumb can hit, the unit and the side in one tap each, and what is typed as large as it is read. */
export function Pad(props: Props) {
  const { hand, units, typed, unit, problem, gauge, onUnit, onSide, onStore, onTyped, onClose } = props
  const add = (signs: string) => (): void => {
    typed.add(signs)
    onTyped()
  }
  const key = (sign: string, name = sign) => (
    <button className="pad-key" type="button" key={sign} aria-label={name} onClick={add(sign)}>
      {sign}
    </button>
  )
  return (
    <section className="pad" aria-label={words.pad}>
      <div className="pad-head">
        <output className="pad-typed" aria-label={words.typed} data-blank={typed.text === ''}>
          {typed.text === '' ? words.nothingTyped : typed.text}
          {typed.text !== '' && <PadUnderstood text={typed.text} unit={unit} hand={hand} units={units} />}
        </output>
        <button className="pad-close" type="button" aria-label={words.closePad} onClick={onClose}>
          <svg viewBox="0 0 20 20" aria-hidden="true">
            <path d="M4 4 L16 16 M16 4 L4 16" />
          </svg>
        </button>
      </div>
      {problem !== null && (
        <div className="pad-problem" role="alert">
          <p>{problem.sentence}</p>
          {problem.spellings?.map((spelling) => (
            <button className="button" type="button" key={spelling} onClick={() => typed.set(spelling)}>
              {spelling}
            </button>
          ))}
        </div>
      )}
      <div className="pad-choices">
        <Choice
          name={words.unit}
          choices={typedUnits(hand.quantity)}
          chosen={unit}
          wordOf={words.units}
          onChoose={onUnit}
        />
        {hand.spot.sides.length > 1 && (
          <Choice
            name={words.side}
            choices={hand.spot.sides}
            chosen={hand.side}
            wordOf={words.sides}
            onChoose={onSide}
          />
        )}
      </div>
      {hasFractions(unit) && (
        <div className="pad-fractions">
          {DENOMINATORS.map((denominator) => (
            <button
              className="pad-key"
              type="button"
              key={denominator}
              aria-label={words.over(denominator)}
              onClick={add(`/${denominator}`)}
            >
              <span className="pad-over">/{denominator}</span>
            </button>
          ))}
        </div>
      )}
      <div className="pad-keys">
        {ROWS[0].map((sign) => key(sign))}
        <button className="pad-key pad-side" type="button" aria-label={words.backspace} onClick={typed.rubOut}>
          <svg viewBox="0 0 28 20" aria-hidden="true">
            <path d="M9 2 H26 V18 H9 L2 10 Z M14 7 L20 13 M20 7 L14 13" />
          </svg>
        </button>
        {ROWS[1].map((sign) => key(sign))}
        <button className="pad-key pad-side" type="button" onClick={() => typed.set('')}>
          {words.clear}
        </button>
        {ROWS[2].map((sign) => key(sign))}
        {hasFractions(unit) ? (
          <button className="pad-key pad-side" type="button" aria-label={words.andName} onClick={add(' ')}>
            {words.and}
          </button>
        ) : (
          <button className="pad-key pad-side" type="button" aria-label={words.minus} onClick={add('-')}>
            {'\u2212'}
          </button>
        )}
        {key('0')}
        {key('.', words.point)}
        <button className="pad-store" type="button" aria-label={words.storeNamed(hand.called)} onClick={onStore}>
          {words.store}
        </button>
      </div>
      {gauge !== null && problem === null && (
        <button className="pad-gauge" type="button" aria-label={words.changeGauge(gauge.text)} onClick={gauge.onChange}>
          <span>{gauge.isAsked ? words.whichGauge : words.withGauge}</span>
          <span>{gauge.text}</span>
        </button>
      )}
    </section>
  )
}

/** What the shop would write for it, where that is not what was typed. */
function PadUnderstood({
  text,
  unit,
  hand,
  units,
}: Pick<Props, 'unit' | 'hand' | 'units'> & { readonly text: string }) {
  const read = parseReading(text, unit)
  if (!read.ok) return null
  const figure = formatReading(read.value, hand.quantity, units)
  return <span className="pad-understood">{words.understood(figureText(figure))}</span>
}

interface ChoiceProps<Value extends string> {
  readonly name: string
  readonly choices: readonly Value[]
  readonly chosen: Value
  readonly wordOf: Readonly<Record<Value, string>>
  readonly onChoose: (value: Value) => void
}

/** A switch of two or three ways: the chosen one is marked by its line, its weight and to those who hear it. */
function Choice<Value extends string>({ name, choices, chosen, wordOf, onChoose }: ChoiceProps<Value>) {
  const [only] = choices
  if (choices.length === 1 && only !== undefined) return <p className="pad-one">{wordOf[only]}</p>
  return (
    // Buttons of one switch.
    // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
    <div className="pad-choice" role="group" aria-label={name}>
      {choices.map((one) => (
        <button type="button" key={one} aria-pressed={one === chosen} onClick={() => onChoose(one)}>
          {wordOf[one]}
        </button>
      ))}
    </div>
  )
}
