import { useMemo } from 'react'
import type { Drawing } from '../../drawing/drawing.ts'
import type { TemplateRef } from '../../drawing/template/template.ts'
import { sheetChoice } from '../../papers/fullSize/sheetChoice.ts'
import { layTemplatePages } from '../../papers/fullSize/layTemplatePages.ts'
import type { Page } from '../../papers/page.ts'
import { todayHere } from '../../device/today.ts'
import { PAPER_LETTERING } from '../../words/paperLettering.ts'
import { useRevisionCode } from '../useRevisionCode.ts'
import { useCommission, useShop } from '../workshop.ts'
import { templateName, templatePurpose } from './templateName.ts'

const NONE: readonly Page[] = []

/** The sheets a template prints on, as the shop prints. */
export function useTemplatePages(ref: TemplateRef | null, drawing: Drawing | null) {
  const doc = useCommission((state) => state.builtDoc)
  const revision = useRevisionCode()
  const computed = useCommission((state) => state.computed)
  const shop = useShop((state) => state.shop)
  return useMemo(() => {
    if (ref === null || drawing === null || doc === null || computed === null) return NONE
    const order = {
      drawing,
      title: templateName(ref, computed),
      use: templatePurpose(ref, computed, shop),
      doc,
      shop,
      revisionCode: revision,
      dateIso: todayHere(),
      words: PAPER_LETTERING,
    }
    return layTemplatePages(order, sheetChoice(shop.printing))
  }, [ref, drawing, doc, revision, computed, shop])
}
