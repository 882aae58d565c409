/** What is said while papers are made and when they left. */
export const PRESS_WORDS = {
  progress: 'How far the papers are',
  starting: 'Setting up',
  making: (paper: string, done: number, of: number) => `${done + 1} of ${of}: ${paper}`,
  cancel: 'Stop',
  done: (name: string) => `${name} is made.`,
  cancelled: 'Stopped. Nothing left.',
  failed:
    'It could not be made. Nothing left; what is written down is untouched. Try once more, or fewer papers at a time.',
} as const

/** Layers of a cutting file, as one who opens it reads them. */
export const FILE_LAYER_WORDS = {
  cut: 'Cut through',
  score: 'Score, do not cut',
  mark: 'Dimensions, only to be read',
  text: 'Lettering',
} as const

/** The sheet on which templates are looked at and leave. */
export const FULL_SIZE_VIEW_WORDS = {
  title: 'What is cut at full size?',
  lead: 'Choose a template. It leaves as a PDF to print and glue on, or as a drawing for a laser or router.',
  templates: 'Templates',
  parts: { body: 'Body', box: 'Box', neck: 'Neck and bridge' },
  look: 'How it is looked at',
  looks: { piece: 'The piece', sheets: 'Its sheets' },
  sheets: 'The sheets it prints on',
  sheet: 'Print on',
  sheetSizes: { A4: 'A4', Letter: 'Letter', A3: 'A3', Tabloid: 'Tabloid', A1: 'A1', A0: 'A0', roll: 'A roll' },
  rollWidthMm: 'Width of the roll',
  overlapMm: 'Overlap of the sheets',
  count: (sheets: number) => (sheets === 1 ? 'One sheet' : `${sheets} sheets`),
  leaves: 'Leaves as',
  forms: {
    pdf: 'PDF at full size',
    svg: 'SVG in mm',
    dxfSplines: 'DXF, curves as splines',
    dxfPolylines: 'DXF, curves as short straights',
  },
  polylineNote: (tolerance: string) => `Short straights stay within ${tolerance} of the curve.`,
  gear: 'What do your forms take up?',
  gearLead: 'Of this shop, for every instrument.',
  jigs: {
    mouldClearanceMm: 'Clearance of the outside mould',
    slatMm: 'Thickness of the slat',
    blanketMm: 'Thickness of the blanket',
    caulClearanceMm: 'Clearance of the inside caul',
  },
  printer: 'Is your printer true?',
  printerLead:
    'Every sheet has a box 100 mm wide at its foot, and a scale of 100 mm along its left edge. Measure what came out of the printer and write it here: from then on every sheet is set longer or shorter by as much.',
  boxAcrossMm: '100 mm across the sheet came out as',
  boxAlongMm: '100 mm along the sheet came out as',
  measure: 'Print at 100 %, never “fit to page”. Measure the box on every sheet before anything is cut to it.',
  caution:
    'Saws, routers and lasers: guards, eye and breathing protection, extraction, and never leave a laser alone. Local codes and the maker’s manual go first.',
  page: (page: number, count: number) => `Sheet ${page} of ${count}`,
} as const

/** The sheet on which papers are gathered and leave together. */
export const PACK_WORDS = {
  title: 'What leaves the shop on paper?',
  lead: 'Tick what you want. It leaves as one PDF, or as a zip with a file for each paper and the cutting files of the templates.',
  papers: 'Papers',
  templates: 'Templates at full size',
  whole: {
    specification: 'Specification, to be signed',
    drawings: 'Shop drawings',
    buyingList: 'Cut list and buying list',
    label: 'Label',
  },
  stages: (count: number) => (count === 1 ? 'Stage sheet, 1 stage' : `Stage sheets, ${count} stages`),
  stage: (title: string) => `Stage sheet: ${title}`,
  all: 'All',
  none: 'None',
  onlyChanged: 'Only what no longer holds',
  pdf: 'Make one PDF',
  zip: 'Make a zip',
  chosen: (count: number) => (count === 1 ? 'One paper chosen' : `${count} papers chosen`),
  nothing: 'Nothing is chosen. Tick a paper first.',
  sheetNote: (paper: string, templates: string) => `Papers on ${paper}, templates on ${templates}.`,
  left: 'What has left, and does it still hold?',
  leftNone: 'Nothing has left for this instrument yet.',
  checking: 'Looking through what has left',
  columns: { paper: 'Paper', at: 'Left on', revision: 'Revision', holds: 'Does it hold?' },
  holds: { yes: 'still holds', no: 'changed since', gone: 'no longer part of it' },
  staleCount: (count: number) =>
    count === 0
      ? 'Everything that left still holds.'
      : count === 1
        ? 'One paper shows what is no longer so: print it anew, and take the old one off the bench.'
        : `${count} papers show what is no longer so: print them anew, and take the old ones off the bench.`,
} as const
