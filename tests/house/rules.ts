import { CORE_FOLDERS, CORE_FOR_VIEWS, ROOMS } from './rooms.ts'
import type { Source } from './source.ts'

/** A rule of the house: what it holds against a file, one sentence each; none where the file keeps it. */
export interface Rule {
  readonly name: string
  readonly check: (source: Source) => readonly string[]
}

/** Files a rule does not hold for, each with the reason. */
export const EXCEPTIONS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'only device reads the clock, the dice and the browser': {
    'src/app/faults.ts': 'has to work when everything else has failed',
  },
}

/** Words that mark what is left for later, written so that this file holds none. */
const LATER = ['TO_DO', 'FIX_ME', 'HA_CK', 'X_XX'].map((word) => word.replace('_', ''))

const MOST_LINES = 300

/** What the entry calls of the core: it hands the numbers to everything else. */
const APP_COMPUTES = ['compute.ts', 'asBuilt.ts', 'keptNumbers.ts']

const roomOf = (path: string): string => /^src\/([^/]+)\//.exec(path)?.[1] ?? ''
const under = (path: string, folder: string): boolean => path.startsWith(`${folder}/`)
const isProgram = ({ path }: Source): boolean => under(path, 'src') && /\.(ts|tsx|mjs)$/.test(path)

/** Lines of the code, strings left out, on which a pattern stands. */
function linesWith({ bare }: Source, pattern: RegExp): number[] {
  return bare.split('\n').flatMap((line, i) => (pattern.test(line) ? [i + 1] : []))
}

const rule = (name: string, applies: (source: Source) => boolean, check: Rule['check']): Rule => ({
  name,
  check: (source) => (applies(source) && EXCEPTIONS[name]?.[source.path] === undefined ? check(source) : []),
})

const inRoom =
  (...rooms: string[]) =>
  (source: Source) =>
    isProgram(source) && rooms.includes(roomOf(source.path))

export const RULES: readonly Rule[] = [
  rule(
    'every file has a room',
    ({ path }) => under(path, 'src'),
    ({ path }) => {
      if (ROOMS[roomOf(path)] === undefined) return ['lies in no room of the house']
      return /(^|\/)(utils?|helpers?|common|services?|misc|lib)(\/|\.)/i.test(path)
        ? ['has a name that says nothing']
        : []
    },
  ),

  rule('rooms import whom they may', isProgram, ({ path, imports }) => {
    const room = ROOMS[roomOf(path)]
    if (room === undefined) return []
    return imports.flatMap(({ target, isPackage, isType }) => {
      if (isPackage) {
        const known = room.packages.includes(target) || (roomOf(path) === 'command' && target.startsWith('node:'))
        return known ? [] : [`brings in the package ${target}`]
      }
      const other = roomOf(target)
      if (other === roomOf(path) || target.endsWith('.css')) return []
      if (!under(target, 'src'))
        return under(target, 'demo-data') && roomOf(path) === 'files' ? [] : [`reaches out of src, to ${target}`]
      if (room.values.includes(other)) return []
      if (room.types.includes(other)) return isType ? [] : [`takes values, not only types, from ${other}/`]
      return [`knows the room ${other}/`]
    })
  }),

  rule('the core keeps to its floors', inRoom('core'), ({ path, imports }) => {
    const folder = /^src\/core\/([^/]+)\//.exec(path)?.[1]
    const allowed = folder === undefined ? undefined : CORE_FOLDERS[folder]
    if (folder === undefined || allowed === undefined) return []
    return imports.flatMap(({ target, names }) => {
      const inside = target.replace('src/core/', '')
      const first = inside.split('/')[0]!
      if (folder === 'instrument' && inside === 'plan.ts' && names.includes('Plan'))
        return ['takes the whole plan: a part takes the few lengths it needs']
      return first === folder || allowed.includes(first) ? [] : [`a part of ${folder}/ knows ${inside}`]
    })
  }),

  rule('views do not compute', inRoom('views', 'ui', 'app'), (source) => {
    const { imports, path } = source
    const called = imports
      .filter(({ target, isType }) => under(target, 'src/core') && !isType)
      .map(({ target }) => target.replace('src/core/', ''))
      .filter((file) => !CORE_FOR_VIEWS.includes(file.split('/')[0]!))
      .filter((file) => !(roomOf(path) === 'app' && APP_COMPUTES.includes(file)))
    const sums =
      roomOf(path) === 'views'
        ? linesWith(
            source,
            /\b\w*(Mm|Rad|Deg)\b!?\)* *[-+*/] *[\w(]|[\w)] *[-+*/] *\(*[\w.]*(Mm|Rad|Deg)\b|\bMath\.(a?(sin|cos|tan)|sqrt|hypot|PI)\b/,
          )
        : []
    return [...called.map((file) => `calls core/${file}`), ...sums.map((line) => `works with lengths in line ${line}`)]
  }),

  rule('the core is pure', inRoom('core'), (source) => [
    ...linesWith(
      source,
      /\b(Date|performance|crypto|process|globalThis|window|document|navigator|setTimeout|setInterval|queueMicrotask|fetch|console|Intl)\b(?!\s*:)|Math\.random/,
    ).map((line) => `reads the clock, rolls dice or knows where it runs, in line ${line}`),
    ...linesWith(source, /\bthrow\b/).map((line) => `throws in line ${line}: what cannot be built is a finding`),
    ...source.strings
      .filter(({ value }) => /[A-Za-z’']{2,} [a-z’']{2,} [a-z’']{2,}/.test(value))
      .map(({ line }) => `holds a sentence in line ${line}: sentences live in words/`),
  ]),

  rule(
    'only device reads the clock, the dice and the browser',
    inRoom('record', 'drawing', 'papers', 'files', 'format', 'words', 'storage', 'state', 'ui', 'views', 'app'),
    (source) =>
      linesWith(
        source,
        /\bnew Date\(\s*\)|\bDate\.now\b|\bperformance\.now\b|\bMath\.random\b|\bcrypto\.|\bnavigator\.(wakeLock|storage|locks|clipboard|mediaDevices|share)\b|\bnew Notification\b/,
      ).map((line) => `asks for itself in line ${line}`),
  ),

  rule(
    'paths are drawn in drawing',
    (source) => isProgram(source) && !['drawing', 'files'].includes(roomOf(source.path)),
    ({ code }) =>
      code
        .split('\n')
        .flatMap((line, i) =>
          /[`'"\s}][MLHVCSQTAmlhvcsqta] ?\$\{[^`]*`/.test(line) && /\bd=|`\s*[Mm] ?\$\{|path/i.test(line)
            ? [`works out a path command in line ${i + 1}`]
            : [],
        ),
  ),

  rule(
    'rounding is for format',
    (source) => isProgram(source) && !['format', 'command'].includes(roomOf(source.path)),
    (source) => {
      const pattern = ['drawing', 'core'].includes(roomOf(source.path))
        ? /\.toFixed\(|\.toPrecision\(/
        : /\.toFixed\(|\.toPrecision\(|Math\.round\(/
      return linesWith(source, pattern).map((line) => `rounds in line ${line}`)
    },
  ),

  rule('no barrels', isProgram, (source) => [
    ...(/\/index\.tsx?$/.test(source.path) ? ['is an index file'] : []),
    ...linesWith(source, /^\s*export \*/).map((line) => `passes on another file in line ${line}`),
  ]),

  rule(
    'nothing is left for later',
    ({ path }) => /\.(ts|tsx|mjs|css|html)$/.test(path),
    ({ text, path, bare }) => {
      const marks = new RegExp(`\\b(${LATER.join('|')})\\b`)
      const later = text
        .split('\n')
        .flatMap((line, i) => (marks.test(line) ? [`leaves something for later in line ${i + 1}`] : []))
      if (!under(path, 'tests')) return later
      const skipped = bare
        .split('\n')
        .flatMap((line, i) =>
          /\b(test|it|describe|suite)\.(only|skip|todo)\b/.test(line) ? [`leaves tests out in line ${i + 1}`] : [],
        )
      return [...later, ...skipped]
    },
  ),

  rule(
    'a file is short',
    ({ path }) => /\.(ts|tsx|mjs|css)$/.test(path),
    ({ text }) => {
      const lines = text.trimEnd().split('\n').length
      return lines > MOST_LINES
        ? [`has ${lines} lines; ${MOST_LINES} are enough, or it needs a reason in the list of exceptions`]
        : []
    },
  ),

  rule(
    'nothing comes from another host',
    (source) => under(source.path, 'src') && roomOf(source.path) !== 'command',
    ({ code, path }) =>
      [...code.matchAll(/\bhttps?:\/\/[\w.-]+/g)]
        .map(([address]) => address)
        .filter((address) => !address.startsWith('http://www.w3.org'))
        .map((address) => `${path} names ${address}`),
  ),
]
