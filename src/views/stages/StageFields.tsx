import { partsOf } from '../../record/patterns/figuresOfStage.ts'
import type { Span } from '../../record/patterns/stages/stagePattern.ts'
import { setStageDetail } from '../../record/changes/stages.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import { keysOf } from '../../record/stageLinks.ts'
import { MOST_STAGE_HOURS, MOST_TIMES } from '../../record/stageSchema.ts'
import { CountField } from '../../ui/CountField.tsx'
import { HoursField } from '../../ui/HoursField.tsx'
import { TextField } from '../../ui/TextField.tsx'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { STAGE_WORDS } from '../../words/stages.ts'
import { STAGE_TITLES } from '../../words/stageTitles.ts'
import { useOrderBench } from './orderBench.ts'
import { useDetail } from './useDetail.ts'

const words = STAGES_PLACE_WORDS
const MOST_NOTE = 4000
const MOST_TITLE = 120
const TIMES = { type: 'count', min: 1, max: MOST_TIMES } as const

/** What a stage is called, what there is to do, and how long it takes. */
export function StageFields({ stage }: { readonly stage: StageInHand }) {
  const { doc, change, isLocked } = useOrderBench()
  const { id, key, own } = stage
  const { lines, whole = lines } = STAGE_WORDS[key]
  const isWhole = partsOf(key, keysOf(doc.stages)).length > 1
  const usualNote = key === 'ownWork' ? '' : (isWhole ? whole : lines).join('\n')
  const usualTitle = key === 'ownWork' ? '' : STAGE_TITLES[key]
  const title = useDetail(id, 'title', own.title ?? usualTitle, (said) => (said === usualTitle ? undefined : said))
  const note = useDetail(id, 'note', own.note ?? usualNote, (said) => (said === usualNote ? undefined : said))
  const times = useDetail<'times', number | null>(id, 'times', stage.times, (said) => said ?? undefined)
  const asked = usualNote === '' ? {} : { missing: words.noteMissing }
  return (
    <section className="detail-part" aria-label={words.what}>
      <h3>{words.what}</h3>
      <TextField label={words.stageTitle} binding={title} most={MOST_TITLE} missing={words.titleMissing} />
      <TextField label={words.note} binding={note} most={MOST_NOTE} lines={4} {...asked} />
      <div className="detail-spans">
        <SpanFields stage={stage} name="handsH" />
        <SpanFields stage={stage} name="waitH" />
        <CountField label={words.times} binding={times} range={TIMES} />
      </div>
      <div className="field-choices">
        {(['inHumidity', 'oneSitting'] as const).map((name) => (
          <label className="check" key={name}>
            <input
              type="checkbox"
              checked={stage[name]}
              disabled={isLocked}
              onChange={({ target }) => change(setStageDetail(id, name, target.checked))}
            />
            <span>{words[name]}</span>
          </label>
        ))}
      </div>
    </section>
  )
}

interface SpanProps {
  readonly stage: StageInHand
  readonly name: 'handsH' | 'waitH'
}

function SpanFields({ stage, name }: SpanProps) {
  const span = stage[name]
  const isUpward = span.low <= span.likely && span.likely <= span.high
  return (
    <fieldset className="detail-span">
      <legend>{words[name]}</legend>
      <div>
        {(['low', 'likely', 'high'] as const).map((of) => (
          <SpanField key={of} stage={stage} name={name} of={of} />
        ))}
      </div>
      {!isUpward && <p className="field-problem">{words.upward}</p>}
    </fieldset>
  )
}

function SpanField({ stage, name, of }: SpanProps & { readonly of: keyof Span }) {
  const span = stage[name]
  const binding = useDetail(stage.id, name, span[of], (hours): Span => ({ ...span, [of]: hours }), `.${of}`)
  return <HoursField label={words.spans[of]} binding={binding} most={MOST_STAGE_HOURS} />
}
