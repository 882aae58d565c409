import { lazy, Suspense, useState } from 'react'
import { CATALOGUE } from '../../core/catalogue.ts'
import { readNumbers } from '../../core/numbers.ts'
import { pickFile } from '../../device/pickFile.ts'
import type { OpenedDrawing, OpenProblem } from '../../files/openDrawing.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { DRAWN_PATH_WORDS, OPEN_PROBLEM } from '../../words/drawnPath.ts'
import { FIELD_WORDS } from '../../words/fields.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'
import './drawnPath.css'

const DrawingDialog = lazy(async () => ({ default: (await import('./DrawingDialog.tsx')).DrawingDialog }))

type Opening =
  | { readonly kind: 'idle' | 'reading' }
  | { readonly kind: 'refused'; readonly problem: OpenProblem | 'notLoaded' }
  | { readonly kind: 'opened'; readonly drawing: OpenedDrawing }

const ACCEPTED = '.svg,.dxf,image/svg+xml,image/vnd.dxf'

/** The outline from a drawing another program saved: what was taken, and the way to take one. */
export function DrawnPathPanel() {
  const { plan, readOnly } = useSheetBench()
  const [opening, setOpening] = useState<Opening>({ kind: 'idle' })
  const { drawnPath } = plan.outline

  const open = async (): Promise<void> => {
    const file = await pickFile(ACCEPTED)
    if (file === null) return
    setOpening({ kind: 'reading' })
    setOpening(await readFile(file))
  }

  return (
    <section
      className="sheet-fields drawn-path"
      data-field="plan.outline.drawnPath"
      aria-labelledby="drawn-path-heading"
    >
      <h2 id="drawn-path-heading">{FIELD_WORDS['outline.drawnPath'].name}</h2>
      <p className="second small">{FIELD_WORDS['outline.drawnPath'].hint}</p>
      {drawnPath === null ? <p>{DRAWN_PATH_WORDS.none}</p> : <TakenFacts fileName={drawnPath.fileName} />}
      <button
        className={drawnPath === null ? 'button button-next' : 'button'}
        type="button"
        disabled={readOnly || opening.kind === 'reading'}
        onClick={() => void open()}
      >
        {drawnPath === null ? DRAWN_PATH_WORDS.open : DRAWN_PATH_WORDS.openAnother}
      </button>
      {opening.kind === 'reading' && <output>{DRAWN_PATH_WORDS.reading}</output>}
      {opening.kind === 'refused' && (
        <p role="alert" className="field-problem">
          {OPEN_PROBLEM[opening.problem]}
        </p>
      )}
      {opening.kind === 'opened' && (
        <Suspense fallback={<output>{DRAWN_PATH_WORDS.reading}</output>}>
          <DrawingDialog drawing={opening.drawing} onClose={() => setOpening({ kind: 'idle' })} />
        </Suspense>
      )}
    </section>
  )
}

/** Reads a file; what reads it is fetched with it. */
async function readFile(file: File): Promise<Opening> {
  try {
    const [{ openDrawing }] = await Promise.all([import('../../files/openDrawing.ts'), import('./DrawingDialog.tsx')])
    const read = await openDrawing(file, file.name)
    return read.ok ? { kind: 'opened', drawing: read.value } : { kind: 'refused', problem: read.problem }
  } catch {
    return { kind: 'refused', problem: 'notLoaded' }
  }
}

/** The file, and how its outline came out. */
function TakenFacts({ fileName }: { readonly fileName: string }) {
  const { plan, computed, units } = useSheetBench()
  const { openHelp } = useSheetPointer()
  return (
    <>
      <dl className="drawn-path-facts">
        <div>
          <dt>{DRAWN_PATH_WORDS.from}</dt>
          <dd className="drawn-path-name">{DRAWN_PATH_WORDS.title(fileName)}</dd>
        </div>
        {plan.outline.kind === 'drawnPath' &&
          (['body.lengthMm', 'fit.largestDepartureMm'] as const).map((key) => (
            <div key={key}>
              <dt>
                <button className="number-name" type="button" onClick={() => openHelp(key)}>
                  {NUMBER_NAMES[key]}
                </button>
              </dt>
              <dd>
                <FigureText
                  figure={formatQuantity(
                    readNumbers(computed.numbers, key)[0] ?? 'none',
                    CATALOGUE[key].quantity,
                    units,
                  )}
                  words={FIGURE_WORDS}
                />
              </dd>
            </div>
          ))}
      </dl>
      {plan.outline.kind !== 'drawnPath' && <p className="second small">{DRAWN_PATH_WORDS.notInUse}</p>}
    </>
  )
}
