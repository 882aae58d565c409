import { CAUTION_WORDS } from '../../words/cautions.ts'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import type { StageInHand } from './stageInHand.ts'

/** What there is to do, and what to mind; of a stage without numbers they fill the sheet. */
export function StageLines({ stage, isWhole }: { readonly stage: StageInHand; readonly isWhole: boolean }) {
  return (
    // It scrolls where it is longer than the sheet: keys need it to hold the focus.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section className="bench-panel stage-lines" data-whole={isWhole} aria-label={words.whatToDo} tabIndex={0}>
      {!isWhole && <h2>{words.whatToDo}</h2>}
      <ol className="stage-lines-list">
        {stage.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      {stage.cautions.length > 0 && (
        <div className="stage-cautions">
          {isWhole ? <h2>{words.cautions}</h2> : <h3>{words.cautions}</h3>}
          {stage.cautions.map((key) => (
            <div className="stage-caution" key={key}>
              <CautionSign />
              <p>
                <strong>{CAUTION_WORDS[key].title}. </strong>
                {CAUTION_WORDS[key].short}
              </p>
            </div>
          ))}
        </div>
      )}
    </section>
  )
}

/** A triangle with a stroke and a dot, as on any warning. */
export function CautionSign() {
  return (
    <svg className="caution-sign" viewBox="0 0 24 22" aria-hidden="true">
      <path d="M12 2 L23 21 H1 Z M12 8.5 V14.5 M12 17.2 V18.4" />
    </svg>
  )
}
