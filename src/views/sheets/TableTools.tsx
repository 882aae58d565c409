import { useState } from 'react'
import { copyText } from '../../device/copyText.ts'
import { saveFile } from '../../device/saveFile.ts'
import { writeCsv, writeTsv } from '../../files/csv.ts'
import { TABLE_WORDS } from '../../words/bodySheets.ts'
import { useSheetBench } from './sheetBench.ts'
import { type FigureTable, tableText } from './tableText.ts'

interface Props {
  /** Made only when it is asked for. */
  readonly table: () => FigureTable
  /** What the table is of, as a part of a file name. */
  readonly fileName: string
}

/** Takes a table away: onto the clipboard, or into a file. */
export function TableTools({ table, fileName }: Props) {
  const { number, units } = useSheetBench()
  const [said, say] = useState('')
  const copy = async (): Promise<void> => {
    say((await copyText(writeTsv(tableText(table(), units)))) ? TABLE_WORDS.copied : TABLE_WORDS.copyFailed)
  }
  const save = (): void => {
    const name = [number, fileName].filter((part) => part !== '').join('-')
    saveFile(`${name.replaceAll(/[^\p{L}\p{N}-]+/gu, '-')}.csv`, writeCsv(tableText(table(), units)), 'text/csv')
  }
  return (
    <div className="commands">
      <button className="button" type="button" onClick={() => void copy()}>
        {TABLE_WORDS.copy}
      </button>
      <button className="button" type="button" onClick={save}>
        {TABLE_WORDS.save}
      </button>
      <output className="second small">{said}</output>
    </div>
  )
}
