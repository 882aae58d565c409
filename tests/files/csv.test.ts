import { describe, expect, it } from 'vitest'
import { type Table, writeCsv, writeTsv } from '../../src/files/csv.ts'

const table: Table = {
  columns: [
    { heading: 'Place', unit: '' },
    { heading: 'Depth', unit: 'mm' },
  ],
  rows: [
    ['Tail', '106.0'],
    ['Lower bout, widest', '-1.5'],
    ['The "waist"', 'flat'],
    ['two\nlines', '3'],
  ],
}

/** A reader of RFC 4180 records of its own, written from the grammar in section 2 of the RFC. */
function readCsv(text: string): string[][] {
  const records: string[][] = []
  let record: string[] = []
  let at = 0
  while (at < text.length) {
    let field = ''
    if (text[at] === '"') {
      at += 1
      for (; at < text.length; at += 1) {
        if (text[at] !== '"') field += text[at]
        else if (text[at + 1] === '"') {
          field += '"'
          at += 1
        } else break
      }
      at += 1
    } else for (; at < text.length && !',\r'.includes(text[at] ?? ''); at += 1) field += text[at]
    record.push(field)
    if (text[at] === ',') at += 1
    else {
      expect(text.slice(at, at + 2)).toBe('\r\n')
      at += 2
      records.push(record)
      record = []
    }
  }
  return records
}

describe('writeCsv', () => {
  it('is read back cell for cell, the unit in the heading', () => {
    expect(readCsv(writeCsv(table))).toEqual([['Place', 'Depth (mm)'], ...table.rows])
  })

  it('writes records as RFC 4180 shows them: CRLF, quotes doubled inside quotes', () => {
    // The quoted forms of section 2, rules 1, 6 and 7.
    const rfc = {
      columns: [
        { heading: 'aaa', unit: '' },
        { heading: 'b"bb', unit: '' },
      ],
      rows: [['zzz', 'y,y']],
    }
    expect(writeCsv(rfc)).toBe('aaa,"b""bb"\r\nzzz,"y,y"\r\n')
  })

  it('keeps a name from running as a formula and leaves numbers alone', () => {
    const hostile = { columns: [{ heading: '=1+1', unit: '' }], rows: [['@x'], ['-3.5'], ['-3+4']] }
    expect(writeCsv(hostile)).toBe("'=1+1\r\n'@x\r\n-3.5\r\n'-3+4\r\n")
  })
})

describe('writeTsv', () => {
  it('has one line a row and one tab between cells', () => {
    expect(
      writeTsv(table)
        .split('\n')
        .map((line) => line.split('\t').length),
    ).toEqual([2, 2, 2, 2, 2])
    expect(writeTsv(table)).toContain('two lines\t3')
  })
})
