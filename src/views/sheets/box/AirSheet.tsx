import type { Figure } from '../../../core/figure.ts'
import type { NumberKey } from '../../../core/catalogue.ts'
import { figureText } from '../../../format/figure.ts'
import { formatDecimal } from '../../../format/formatDecimal.ts'
import { formatQuantity } from '../../../format/formatQuantity.ts'
import { formatBand, formatSound } from '../../../format/formatSound.ts'
import { AIR_WORDS } from '../../../words/box/air.ts'
import { BigFigure } from '../BigFigure.tsx'
import { NumberList } from '../NumberList.tsx'
import { PlanFields } from '../PlanFields.tsx'
import { QuestionSheet } from '../QuestionSheet.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { ShopBoxes } from './ShopBoxes.tsx'
import './box.css'

const BOX: readonly NumberKey[] = [
  'air.grossMm3',
  'air.takenUpMm3',
  'air.netMm3',
  'air.holeMm2',
  'air.holeRadiusMm',
  'air.rigidHz',
]

const isSound = (hz: Figure): hz is number => typeof hz === 'number'

/** Where will the air sound? */
export function AirSheet() {
  const { computed, plan } = useSheetBench()
  const { air } = computed.numbers
  return (
    <QuestionSheet
      sheet="air"
      main={
        <>
          {isSound(air.lowHz) && isSound(air.highHz) ? (
            <section aria-label={AIR_WORDS.bandName}>
              <h2>{AIR_WORDS.bandName}</h2>
              <p className="air-band">{formatBand(air.lowHz, air.highHz, plan.strings.pitchHz)}</p>
              <div className="big-figures">
                <BigFigure number="air.lowHz" size={72} />
                <BigFigure number="air.highHz" size={72} />
              </div>
              <p className="second">{AIR_WORDS.why}</p>
            </section>
          ) : (
            <p>{AIR_WORDS.noBand}</p>
          )}
          <Heard />
          <ShopBoxes />
          <h2>{AIR_WORDS.whatIf}</h2>
          {(['holeChanged', 'depthChanged'] as const).map((change) => {
            const { lowHz, highHz } = air[change]
            return (
              <section key={change} aria-label={change === 'holeChanged' ? AIR_WORDS.hole : AIR_WORDS.depth}>
                <h3>{change === 'holeChanged' ? AIR_WORDS.hole : AIR_WORDS.depth}</h3>
                <div className="big-figures">
                  <BigFigure number={`air.${change}.cents`} size={44} />
                  <BigFigure number={`air.${change}.lowHz`} size={44} />
                  <BigFigure number={`air.${change}.highHz`} size={44} />
                </div>
                {isSound(lowHz) && isSound(highHz) && (
                  <p className="second">{formatBand(lowHz, highHz, plan.strings.pitchHz)}</p>
                )}
              </section>
            )
          })}
          <h2>{AIR_WORDS.numbers}</h2>
          <NumberList keys={BOX} />
        </>
      }
      margin={
        <>
          <PlanFields heading={AIR_WORDS.heard} fields={['air.heardHz', 'air.temperatureC']} />
          <p className="second small">{AIR_WORDS.howToHear}</p>
          <PlanFields heading={AIR_WORDS.whatIf} fields={['air.holeChangeMm', 'air.depthChangeMm']} />
        </>
      }
    />
  )
}

/** What was heard of the closed box, as a note, and what part of the rigid box that is. */
function Heard() {
  const { computed, plan, units } = useSheetBench()
  const { heardHz } = plan.air
  const { ratio } = computed.numbers.air
  if (heardHz === null) return null
  return (
    <section aria-label={AIR_WORDS.heardName}>
      <h2>{AIR_WORDS.heardName}</h2>
      <p>
        {AIR_WORDS.heardSays(figureText(formatDecimal(heardHz, 'hertz')), formatSound(heardHz, plan.strings.pitchHz))}{' '}
        {isSound(ratio) && AIR_WORDS.heardRatio(figureText(formatQuantity(ratio, 'ratio', units)))}
      </p>
    </section>
  )
}
