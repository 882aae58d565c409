import fc from 'fast-check'
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

describe('writeCsv of any cells', () => {
  // Text with everything the format is made of in it, and numbers as the program writes them.
  const cell = fc.oneof(
    fc.string({ unit: fc.constantFrom(',', '"', '\r', '\n', '\t', ' ', '=', '+', '-', '@', "'", 'a', 'é', '7', '.') }),
    fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }).map((value) => value.toFixed(2)),
  )
  const tables = fc.integer({ min: 1, max: 4 }).chain((width) =>
    fc.record({
      headings: fc.array(cell, { minLength: width, maxLength: width }),
      rows: fc.array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 6 }),
    }),
  )

  it('is read back cell for cell; only what would run as a formula has an apostrophe before it', () => {
    fc.assert(
      fc.property(tables, ({ headings, rows }) => {
        const text = writeCsv({ columns: headings.map((heading) => ({ heading, unit: '' })), rows })
        const written = [headings, ...rows]
        const read = readCsv(text)
        expect(read.map((record) => record.length)).toEqual(written.map((record) => record.length))
        read.flat().forEach((one, i) => {
          const was = written.flat()[i]!
          const isNumber = was !== '' && !/[^-\d.]/.test(was) && Number.isFinite(Number(was)) && /\d$/.test(was)
          if (one === was) expect(isNumber || !'=+-@\t\r'.includes(was.charAt(0) || 'a')).toBe(true)
          else {
            expect(one).toBe(`'${was}`)
            expect('=+-@\t\r'.includes(was.charAt(0))).toBe(true)
          }
        })
      }),
    )
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
