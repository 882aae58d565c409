import { factsPiece, textPiece } from './blocks/factsTable.ts'
import { layPartHeading } from './blocks/heading.ts'
import { layNote } from './blocks/caution.ts'
import { laySignatures } from './blocks/signatures.ts'
import type { Piece, Run } from './flow.ts'
import type { Block, Page } from './page.ts'
import type { PaperOrder } from './paperOrder.ts'
import { columnOf, setOnPages } from './sheetPages.ts'
import { specificationSections } from './specificationFacts.ts'

/**
 * What the client signs: what was agreed, part by part, in the shop's units, what was wished for in the client's own words, and the lines to
 * sign on. No prices. Always at least one page.
 */
export function laySpecification(order: PaperOrder): readonly Page[] {
  const { doc, words, shop } = order
  const { specification } = words
  const column = columnOf(order.paperSize, 'upright')
  const [agreed, ...parts] = specificationSections(order)
  const wishes = doc.brief.wishes.trim()
  const run = (title: string, pieces: readonly Piece[]): Run => ({
    pieces: [whole(layPartHeading(title, column), true), ...pieces],
    again: layPartHeading(`${title}, ${words.paper.continued}`, column),
  })
  const runs: Run[] = [
    run(specification.sections.agreed, [
      whole(layNote(specification.lead, column)),
      factsPiece(agreed?.facts ?? [], column),
    ]),
    ...(wishes === '' ? [] : [run(specification.sections.wishes, [textPiece(wishes, column)])]),
    ...parts.map(({ key, facts }) => run(specification.sections[key], [factsPiece(facts, column)])),
    run(specification.statementTitle, [
      whole(
        laySignatures(
          specification.statement(doc.number, order.revisionCode),
          [
            // An instrument for stock has nobody yet who could sign for it.
            ...(doc.brief.client.trim() === '' ? [] : [{ part: specification.signs.client, name: doc.brief.client }]),
            { part: specification.signs.maker, name: shop.name },
          ],
          specification.signs.date,
          column,
        ),
      ),
    ]),
  ]
  return setOnPages(order, runs, { sheet: specification.sheet, showsOf: () => '', scale: null })
}

const whole = (block: Block, keepsWithNext = false): Piece => ({ kind: 'whole', block, airMm: 1, keepsWithNext })
