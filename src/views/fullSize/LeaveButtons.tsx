import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { POLYLINE_TOLERANCE_MM } from '../../papers/fullSize/fullSizeOrder.ts'
import { FULL_SIZE_VIEW_WORDS } from '../../words/press.ts'
import type { PressForm } from '../press.ts'
import { useShop } from '../workshop.ts'
import type { PressControl } from './usePressRun.ts'

const FORMS = ['pdf', 'svg', 'dxfSplines', 'dxfPolylines'] as const satisfies readonly PressForm[]

/** The forms one template leaves in. */
export function LeaveButtons({
  control,
  onLeave,
}: {
  readonly control: PressControl
  readonly onLeave: (form: PressForm) => void
}) {
  const units = useShop((state) => state.shop.units)
  const isRunning = control.standing.kind === 'running'
  const { forms, polylineNote } = FULL_SIZE_VIEW_WORDS
  return (
    <div className="full-size-forms">
      {FORMS.map((form) => (
        <button
          key={form}
          className={form === 'pdf' ? 'button button-next' : 'button'}
          type="button"
          disabled={isRunning}
          onClick={() => onLeave(form)}
        >
          {forms[form]}
        </button>
      ))}
      <p className="second small">
        {polylineNote(figureText(formatQuantity(POLYLINE_TOLERANCE_MM, 'fineLength', units)))}
      </p>
    </div>
  )
}
