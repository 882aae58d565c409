import PDFDocument from 'pdfkit'
import { MM_PER_PT } from '../../papers/page.ts'
import { inFont } from './pdfSigns.ts'
import { unpackedFont } from './unpackedFont.ts'

/** Font files in WOFF or TTF; the further ones for signs the first have not. */
export interface PdfFonts {
  readonly plain: Uint8Array
  readonly strong: Uint8Array
  readonly plainMore?: Uint8Array
  readonly strongMore?: Uint8Array
}

/** A run of text in one font, ready to be shown: what follows Tf and Tm. */
export interface PdfRun {
  readonly font: string
  readonly shown: string
  /** How far it reaches, in parts of its size. */
  readonly advance: number
}

/** A PDF in the making, in mm from the upper left corner of each page. All that is known of the library that writes it is in this file. */
export interface PdfSheet {
  readonly beginPage: (widthMm: number, heightMm: number) => void
  /** Operators of a content stream, lengths in mm, y down. */
  readonly add: (operators: string) => void
  readonly runsOf: (text: string, weight: 'plain' | 'strong') => readonly PdfRun[]
  readonly finish: () => Promise<Uint8Array<ArrayBuffer>>
}

/** What the library keeps of a font that is embedded. */
interface EmbeddedFont {
  readonly id: string
  readonly font: { readonly hasGlyphForCodePoint: (codePoint: number) => boolean }
  readonly ref: () => unknown
  readonly encode: (
    text: string,
    features: Readonly<Record<string, boolean>>,
  ) => [codes: readonly string[], places: readonly { readonly xAdvance: number; readonly advanceWidth: number }[]]
}
interface Inside {
  readonly _font: EmbeddedFont
  readonly _root: { readonly data: { readonly ViewerPreferences: { readonly data: Record<string, unknown> } } }
  readonly page: { readonly fonts: Record<string, unknown> }
}

/** Figures stand in columns: digits of one width. A sign is a glyph: no two flow into one. */
const FEATURES = { tnum: true, liga: false } as const
const WHO = 'Ribwright'

export function openPdf(fonts: PdfFonts, about: { readonly title: string; readonly dateIso: string }): PdfSheet {
  const day = dayOf(about.dateIso)
  const document = new PDFDocument({
    autoFirstPage: false,
    // The library's own default would be looked for on the disk.
    font: null as never,
    margin: 0,
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    info: { Title: about.title, Creator: WHO, Producer: WHO, CreationDate: day, ModDate: day },
  })
  const inside = document as unknown as Inside
  inside._root.data.ViewerPreferences.data['PrintScaling'] = 'None'
  const bytes = collected(document)
  const open = (file: Uint8Array | undefined): EmbeddedFont[] => {
    if (file === undefined) return []
    document.font(unpackedFont(file))
    return [inside._font]
  }
  const faces = {
    plain: [...open(fonts.plain), ...open(fonts.plainMore)].map(faceOf),
    strong: [...open(fonts.strong), ...open(fonts.strongMore)].map(faceOf),
  }
  const known = new Map<string, readonly PdfRun[]>()
  const runsOf = (text: string, weight: 'plain' | 'strong'): readonly PdfRun[] => {
    const key = `${weight} ${text}`
    const own = faces[weight]
    const runs = known.get(key) ?? inFont(text, own).map((part) => own[part.font]!.set(part.text))
    known.set(key, runs)
    for (const { font } of runs) inside.page.fonts[font] ??= own.find(({ face }) => face.id === font)!.face.ref()
    return runs
  }
  // One write a page: each costs the library far more than the few signs in it.
  let content: string[] = []
  const endPage = () => {
    if (content.length > 0) document.addContent(content.join('\n'))
    content = []
  }
  return {
    beginPage: (widthMm, heightMm) => {
      endPage()
      document.addPage({ size: [widthMm / MM_PER_PT, heightMm / MM_PER_PT], margin: 0 })
      document.scale(1 / MM_PER_PT)
    },
    add: (operators) => void content.push(operators),
    runsOf,
    finish: () => {
      endPage()
      document.end()
      return bytes
    },
  }
}

const faceOf = (face: EmbeddedFont) => {
  const known = new Map<number, boolean>()
  return {
    face,
    set: setterOf(face),
    has: (codePoint: number): boolean => {
      const has = known.get(codePoint) ?? face.font.hasGlyphForCodePoint(codePoint)
      known.set(codePoint, has)
      return has
    },
  }
}

/**
 * Sets text in a font. The library lays out a whole text afresh each time, which takes longer than all the rest; signs and the kerning of
 * pairs of them are few, so each is asked for once.
 */
function setterOf(face: EmbeddedFont): (text: string) => PdfRun {
  const signs = new Map<string, { readonly code: string; readonly advance: number }>()
  const kerns = new Map<string, number>()
  const signOf = (sign: string) => {
    const known = signs.get(sign)
    if (known !== undefined) return known
    const [codes, places] = face.encode(sign, FEATURES)
    const set = { code: codes.join(''), advance: places.reduce((sum, { advanceWidth }) => sum + advanceWidth, 0) }
    signs.set(sign, set)
    return set
  }
  const kernOf = (pair: string) => {
    const known = kerns.get(pair)
    if (known !== undefined) return known
    const [, places] = face.encode(pair, FEATURES)
    const kern = places.length === 2 ? places[0]!.advanceWidth - places[0]!.xAdvance : 0
    kerns.set(pair, kern)
    return kern
  }
  return (text) => {
    let shown = ''
    let open = ''
    let thousandths = 0
    let last = ''
    for (const sign of text) {
      const kern = last === '' ? 0 : kernOf(last + sign)
      if (kern !== 0) {
        shown += `<${open}>${kern}`
        open = ''
      }
      const { code, advance } = signOf(sign)
      open += code
      thousandths += advance - kern
      last = sign
    }
    return { font: face.id, shown: `[${shown}<${open}>] TJ`, advance: thousandths / 1000 }
  }
}

/** Midnight of a day of the calendar, the same wherever it is written; of what is no day, that of the first one a PDF can name. */
function dayOf(dateIso: string): Date {
  const day = new Date(`${dateIso.slice(0, 10)}T00:00:00Z`)
  return Number.isNaN(day.getTime()) ? new Date(0) : day
}

function collected(document: PDFKit.PDFDocument): Promise<Uint8Array<ArrayBuffer>> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = []
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    document.on('error', reject)
    document.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0))
      let at = 0
      for (const chunk of chunks) {
        bytes.set(chunk, at)
        at += chunk.length
      }
      resolve(bytes)
    })
  })
}
