import type { ReactNode } from 'react'
import { SHEET_WORDS, type Sheet } from '../../words/sheets.ts'
import { FindingsHere } from './FindingsHere.tsx'
import { fieldsOfSheet } from './sheetOfField.ts'

interface Props {
  readonly sheet: Sheet
  /** How it is looked at: where it is measured from. */
  readonly tools?: ReactNode
  /** What is asked most, across the whole sheet. */
  readonly answer?: ReactNode
  /** Drawing and figures, large. */
  readonly main: ReactNode
  /** The fields that move them. */
  readonly margin?: ReactNode
  /** Tables, the whole width of the sheet. */
  readonly foot?: ReactNode
}

/** The form of every question sheet: the question, what answers it, the fields in the margin, the tables beneath. */
export function QuestionSheet({ sheet, tools, answer, main, margin, foot }: Props) {
  const { title, lead } = SHEET_WORDS[sheet]
  return (
    <div className="question">
      <header className="question-head">
        <div>
          <h1>{title}</h1>
          <p className="second">{lead}</p>
        </div>
        {tools}
      </header>
      {answer !== undefined && <div className="question-answer">{answer}</div>}
      <div className="question-body" data-has-margin={margin !== undefined}>
        <div className="question-main">
          <FindingsHere fields={fieldsOfSheet(sheet)} />
          {main}
        </div>
        {margin !== undefined && (
          <div className="question-margin">
            <div className="question-margin-fields">{margin}</div>
          </div>
        )}
      </div>
      {foot !== undefined && <div className="question-foot">{foot}</div>}
    </div>
  )
}
