/** Who may import whom. A room not listed under `values` or `types` may not be named at all; what gives values gives types too. */
export interface Room {
  readonly values: readonly string[]
  readonly types: readonly string[]
  readonly packages: readonly string[]
}

export const ROOMS: Readonly<Record<string, Room>> = {
  core: { values: [], types: [], packages: [] },
  record: { values: ['core'], types: [], packages: ['zod/mini', 'immer'] },
  format: { values: ['core'], types: ['record'], packages: ['fraction.js'] },
  words: { values: ['core'], types: ['record', 'format', 'drawing', 'papers'], packages: [] },
  drawing: { values: ['core'], types: ['format', 'words'], packages: [] },
  papers: { values: ['core', 'record', 'format', 'drawing'], types: ['words'], packages: [] },
  files: {
    values: ['core', 'record', 'drawing', 'format', 'papers'],
    types: [],
    packages: ['@tarikjabiri/dxf', 'fflate', 'pdfkit', 'saxes', 'svgpath'],
  },
  device: { values: [], types: [], packages: [] },
  storage: { values: ['record'], types: ['core'], packages: ['dexie', 'zod/mini'] },
  state: {
    values: ['core', 'record', 'files', 'storage', 'device'],
    types: [],
    packages: ['zustand', 'zustand/vanilla', 'react', 'immer'],
  },
  ui: { values: ['format', 'words', 'drawing', 'papers'], types: ['core', 'record'], packages: ['react', 'react-dom'] },
  views: {
    values: ['core', 'record', 'format', 'words', 'drawing', 'papers', 'files', 'state', 'device', 'ui'],
    types: ['storage'],
    packages: ['react', 'react-dom', 'wouter', 'zustand'],
  },
  app: {
    values: [
      'core',
      'record',
      'format',
      'words',
      'drawing',
      'papers',
      'files',
      'storage',
      'state',
      'device',
      'ui',
      'views',
    ],
    types: [],
    packages: [
      'react',
      'react-dom/client',
      'wouter',
      'wouter/use-hash-location',
      'zustand',
      'zustand/vanilla',
      '@fontsource/barlow/files/barlow-latin-400-normal.woff?url',
      '@fontsource/barlow/files/barlow-latin-600-normal.woff?url',
      '@fontsource/barlow/files/barlow-latin-ext-400-normal.woff?url',
      '@fontsource/barlow/files/barlow-latin-ext-600-normal.woff?url',
    ],
  },
  command: {
    values: ['core', 'record', 'format', 'words', 'drawing', 'papers', 'files'],
    types: [],
    packages: ['vite', 'playwright-core', '@sparticuz/chromium'],
  },
}

/** Inside the core: geometry knows no instrument, units know nothing, a part knows neither the record nor the pages that call it. */
export const CORE_FOLDERS: Readonly<Record<string, readonly string[]>> = {
  units: [],
  geometry: ['units'],
  instrument: ['units', 'geometry', 'figure.ts', 'plan.ts', 'neckPlan.ts', 'boxPlan.ts'],
  wood: ['units', 'instrument', 'figure.ts', 'plan.ts', 'numbers.ts'],
}

/** What of the core a view may call: tables, lists, and a part that answers one question; nothing that computes an instrument or draws a curve. */
export const CORE_FOR_VIEWS: readonly string[] = [
  'catalogue.ts',
  'numbers.ts',
  'plan.ts',
  'boxPlan.ts',
  'planFields.ts',
  'fixture.ts',
  'fixtureFits.ts',
  'quantity.ts',
  'findings.ts',
  'figure.ts',
  'instrument',
  'shopAir.ts',
  'verdict.ts',
  'plateSite.ts',
  'units',
  'wood',
]
