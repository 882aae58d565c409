import { useDeferredValue, useMemo, useState } from 'react'
import { isForm } from '../../drawing/template/formOff.ts'
import type { TemplateRef } from '../../drawing/template/template.ts'
import { listTemplates, templateDrawingOf } from '../../drawing/templateDrawingOf.ts'
import { templatePaper } from '../../papers/paperId.ts'
import { DrawingFrame } from '../../ui/DrawingFrame.tsx'
import { PaperPages } from '../../ui/PaperPages.tsx'
import { SEEN_FROM_WORDS } from '../../words/drawing.ts'
import { DRAWING_WORDS } from '../../words/drawings.ts'
import { FULL_SIZE_VIEW_WORDS } from '../../words/press.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { useSheetFacts } from '../../ui/sheetFacts.ts'
import { drawingFigure } from '../sheets/drawingFigure.ts'
import { useCommission, useShop } from '../workshop.ts'
import { GearFields } from './GearFields.tsx'
import { LeaveButtons } from './LeaveButtons.tsx'
import { PrinterFields } from './PrinterFields.tsx'
import { PressStatus } from './PressStatus.tsx'
import { SheetFields } from './SheetFields.tsx'
import { TemplateList } from './TemplateList.tsx'
import { templateName, templatePurpose } from './templateName.ts'
import { useTemplatePages } from './useTemplatePages.ts'
import { usePressRun } from './usePressRun.ts'
import '../sheets/sheets.css'
import './fullSize.css'

const words = FULL_SIZE_VIEW_WORDS
type Look = 'piece' | 'sheets'

/** What is cut at full size? */
export function FullSizeView() {
  const plan = useCommission((state) => state.builtDoc?.plan ?? null)
  const computed = useCommission((state) => state.computed)
  const shop = useShop((state) => state.shop)
  const [asked, setAsked] = useState<string | null>(null)
  const [look, setLook] = useState<Look>('piece')
  const control = usePressRun()
  const refs = useMemo(
    () => (computed === null || plan === null ? [] : listTemplates(computed, plan)),
    [computed, plan],
  )
  const chosen = refs.find((ref) => templatePaper(ref) === asked) ?? refs[0] ?? null
  // A template takes longer to draw than a choice to make: the choice is painted first.
  const shown = useDeferredValue(chosen)
  const drawing = useMemo(
    () =>
      shown === null || computed === null || plan === null ? null : templateDrawingOf(shown, computed, plan, shop.jigs),
    [shown, computed, plan, shop.jigs],
  )
  const formatValue = useMemo(() => drawingFigure(shop.units, FIGURE_WORDS), [shop.units])
  const pages = useTemplatePages(shown, drawing)
  useSheetFacts(drawing === null ? {} : { seenFrom: SEEN_FROM_WORDS[drawing.seenFrom], scale: '1 : 1' })
  if (computed === null || plan === null || shown === null || chosen === null || drawing === null) return null
  const nameOf = (ref: TemplateRef) => templateName(ref, computed)
  return (
    <div className="question">
      <header className="question-head">
        <div>
          <h1>{words.title}</h1>
          <p className="second">{words.lead}</p>
        </div>
      </header>
      <div className="full-size">
        <TemplateList refs={refs} chosen={chosen} nameOf={nameOf} onChoose={(ref) => setAsked(templatePaper(ref))} />
        <section className="full-size-piece" aria-labelledby="template-title">
          <h2 id="template-title">{nameOf(shown)}</h2>
          <p className="second">{templatePurpose(shown, computed, shop)}</p>
          <fieldset className="commands" aria-label={words.look}>
            {(['piece', 'sheets'] as const).map((one) => (
              <button
                key={one}
                className="button"
                type="button"
                aria-pressed={look === one}
                onClick={() => setLook(one)}
              >
                {words.looks[one]}
              </button>
            ))}
          </fieldset>
          {look === 'piece' ? (
            <DrawingFrame
              key={templatePaper(shown)}
              mode="screen"
              drawing={drawing}
              told={{ ...DRAWING_WORDS[drawing.name], name: nameOf(shown) }}
              formatValue={formatValue}
            />
          ) : (
            <PaperPages pages={pages} label={(page) => words.page(page.number, page.count)} />
          )}
        </section>
        <section className="full-size-leaves" aria-label={words.leaves}>
          <SheetFields />
          <p>
            <strong className="full-size-count">{words.count(pages.length)}</strong>
          </p>
          <LeaveButtons control={control} onLeave={(form) => control.make([templatePaper(chosen)], form)} />
          <PressStatus control={control} nameOf={() => nameOf(chosen)} />
          <p className="second small">{words.measure}</p>
          <p className="second small">{words.caution}</p>
          {isForm(shown.name) && <GearFields />}
          <PrinterFields />
        </section>
      </div>
    </div>
  )
}
