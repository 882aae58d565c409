import type { ReactNode } from 'react'
import { SHEET_LEADS } from '../../words/sheetLeads.ts'
import { SHEET_TITLES, type Sheet } from '../../words/sheets.ts'
import { FindingsHere } from './FindingsHere.tsx'
import { fieldsOfSheet } from './sheetOfField.ts'
import './questionLead.css'

interface Props {
  readonly sheet: Sheet
  /** How it is looked at: where it is measured from. */
  readonly tools?: ReactNode
  /** What is asked most, across the whole sheet. */
  readonly answer?: ReactNode
  /** A drawing that is worked in: it stays first, and what does not fit is a line beneath it. */
  readonly drawing?: ReactNode
  /** Drawing and figures, large. */
  readonly main: ReactNode
  /** The fields that move them. */
  readonly margin?: ReactNode
  /** Tables, the whole width of the sheet. */
  readonly foot?: ReactNode
}

/** The form of every question sheet: the question, what answers it, the fields in the margin, the tables beneath. */
export function QuestionSheet({ sheet, tools, answer, drawing, main, margin, foot }: Props) {
  return (
    <div className="question">
      <header className="question-head">
        <div>
          <h1>{SHEET_TITLES[sheet]}</h1>
          <p className="second">{SHEET_LEADS[sheet]}</p>
        </div>
        {tools}
      </header>
      {answer !== undefined && <div className="question-answer">{answer}</div>}
      <div className="question-body" data-has-margin={margin !== undefined} data-has-lead={drawing !== undefined}>
        <div className="question-main">
          {drawing !== undefined && <div className="question-lead">{drawing}</div>}
          <FindingsHere fields={fieldsOfSheet(sheet)} isFolded={drawing !== undefined} />
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
