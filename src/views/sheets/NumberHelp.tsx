import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import { standingOf } from '../../record/standing.ts'
import { setTolerance } from '../../record/changes/tolerances.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { FIELD_WORDS } from '../../words/fields.ts'
import { NUMBER_WORDS } from '../../words/numbers.ts'
import { HELP_WORDS, TOOL_WORDS } from '../../words/bodySheets.ts'
import { STANDING_WORDS } from '../../words/measuring.ts'
import { BuiltAndPlanned } from './BuiltAndPlanned.tsx'
import { isInUse } from './fieldsInUse.ts'
import { useSheetBench } from './sheetBench.ts'
import { FIRST_TOLERANCE, ToleranceField } from './ToleranceField.tsx'

/** What a number is, how it is measured and worked out and after whom, how closely it is to be kept, what moves it, how sure it is. */
export function NumberHelp({ number, onClose }: { readonly number: NumberKey; readonly onClose: () => void }) {
  const { plan, units, tolerances, edit, newId, readOnly, goToField } = useSheetBench()
  const about = CATALOGUE[number]
  const hangsOn = about.hangsOn.filter((field) => isInUse(plan, field))
  const { name, what, how, formula, from } = NUMBER_WORDS[number]
  const own = tolerances.own[number]
  const shop = tolerances.shop[number]
  const fallback = shop === undefined ? about.tolerance : shop
  const now = own === undefined ? fallback : own
  const origin =
    own !== undefined
      ? HELP_WORDS.toleranceOwn
      : shop !== undefined
        ? HELP_WORDS.toleranceShop
        : HELP_WORDS.toleranceStarting
  const first = about.tolerance ?? FIRST_TOLERANCE[about.quantity]
  const fallbackText =
    fallback === null ? HELP_WORDS.toleranceNone : `± ${figureText(formatQuantity(fallback, about.quantity, units))}`
  return (
    <Dialog title={name} onClose={onClose}>
      <div className="dialog-body number-help">
        <p>{what}</p>
        <section>
          <h3>{HELP_WORDS.howMeasured}</h3>
          {how === null || about.measured === null ? (
            <p>{HELP_WORDS.notMeasured}</p>
          ) : (
            <p>
              {how} <span className="second">({TOOL_WORDS[about.measured.tool]})</span>
            </p>
          )}
        </section>
        <section>
          <h3>{HELP_WORDS.workedOut}</h3>
          <p>{formula}</p>
          <p className="second">{from}</p>
        </section>
        <BuiltAndPlanned number={number} />
        {first !== null && (
          <section>
            <h3>{HELP_WORDS.tolerance}</h3>
            <p className="second">{now === null ? HELP_WORDS.toleranceNone : origin}</p>
            {now !== null && <ToleranceField number={number} value={now} />}
            <div className="commands">
              <button
                className="button"
                type="button"
                disabled={readOnly}
                onClick={() => edit(setTolerance(number, now === null ? first : null), newId())}
              >
                {now === null ? HELP_WORDS.setOne : HELP_WORDS.printNone}
              </button>
              {own !== undefined && (
                <button
                  className="button"
                  type="button"
                  disabled={readOnly}
                  onClick={() => edit(setTolerance(number, 'asShop'), newId())}
                >
                  {HELP_WORDS.asShop}: {fallbackText}
                </button>
              )}
            </div>
          </section>
        )}
        <section>
          <h3>{HELP_WORDS.hangsOn}</h3>
          <ul className="commands">
            {hangsOn.map((field) => (
              <li key={field}>
                <button
                  className="button"
                  type="button"
                  onClick={() => {
                    onClose()
                    goToField(field)
                  }}
                >
                  {FIELD_WORDS[field].name}
                </button>
              </li>
            ))}
          </ul>
        </section>
        <section>
          <h3>{HELP_WORDS.standing}</h3>
          <p>{STANDING_WORDS[standingOf(number, plan)]}</p>
        </section>
      </div>
    </Dialog>
  )
}
