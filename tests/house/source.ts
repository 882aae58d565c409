import { readdirSync, readFileSync } from 'node:fs'
import { posix } from 'node:path'

/** One file of the codebase as the rules of the house read it. Paths are from the project's folder, with forward slashes. */
export interface Source {
  readonly path: string
  readonly text: string
  /** The text without its comments, line breaks kept. */
  readonly code: string
  /** The code without what stands in strings. */
  readonly bare: string
  /** What stands in its strings, with the line each begins on. */
  readonly strings: readonly { readonly value: string; readonly line: number }[]
  readonly imports: readonly Import[]
}

export interface Import {
  /** The path of the file it names, or the name of the package. */
  readonly target: string
  readonly isPackage: boolean
  readonly isType: boolean
  /** What is imported by name. */
  readonly names: readonly string[]
}

export function readSource(path: string, text: string): Source {
  const { code, bare, strings } = strip(text)
  return { path, text, code, bare, strings, imports: /\.(ts|tsx|mjs)$/.test(path) ? importsOf(path, code) : [] }
}

/** Every file under the given folders, or the files themselves. */
export function readSources(root: URL, folders: readonly string[]): Source[] {
  return folders.flatMap((folder) =>
    readdirSync(new URL(`${folder}/`, root), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => posix.join(entry.parentPath.replaceAll('\\', '/'), entry.name))
      .map((full) => full.slice(decodeURIComponent(root.pathname).length))
      .map((path) => readSource(path, readFileSync(new URL(path, root), 'utf8'))),
  )
}

const STATEMENT = /(?:^|[\n;])\s*(?:import|export)\s+(type\s+)?([\w$*{}\s,]+?)\s+from\s*(['"])([^'"\n]+)\3/g
const BARE = /(?:^|[\n;])\s*import\s*(['"])([^'"\n]+)\1/g
const CALL = /\bimport\(\s*(['"])([^'"\n]+)\1\s*\)/g

function importsOf(path: string, code: string): Import[] {
  const found: Import[] = []
  const add = (target: string, isType: boolean, names: readonly string[]) => {
    const isPackage = !target.startsWith('.')
    found.push({
      target: isPackage ? target : posix.join(posix.dirname(path), target.replace(/\?.*$/, '')),
      isPackage,
      isType,
      names,
    })
  }
  for (const [, typeOnly, clause = '', , target = ''] of code.matchAll(STATEMENT)) {
    const braces = /\{([^}]*)\}/.exec(clause)?.[1]
    const inBraces = (braces ?? '')
      .split(',')
      .map((one) => one.trim())
      .filter((one) => one !== '')
    const outside = clause.replace(/\{[^}]*\}/, '').replaceAll(/[,\s]/g, '')
    const everyIsType = inBraces.length > 0 && outside === '' && inBraces.every((one) => one.startsWith('type '))
    add(
      target,
      typeOnly !== undefined || everyIsType,
      inBraces.map((one) => one.replace(/^type /, '').split(' as ')[0]!),
    )
  }
  for (const pattern of [BARE, CALL]) for (const [, , target = ''] of code.matchAll(pattern)) add(target, false, [])
  return found
}

/** Parts code, comments and strings by walking through the text once. */
function strip(text: string): Pick<Source, 'code' | 'bare' | 'strings'> {
  let code = ''
  let bare = ''
  const strings: { value: string; line: number }[] = []
  let line = 1
  /** Depths of braces at which a template goes on once they close. */
  const templates: number[] = []
  let depth = 0
  let i = 0
  const take = (part: string, isString = false) => {
    code += part
    bare += isString ? part.replaceAll(/[^\n]/g, ' ') : part
    line += part.split('\n').length - 1
    i += part.length
  }
  const drop = (part: string) => {
    const kept = part.replaceAll(/[^\n]/g, '')
    code += kept
    bare += kept
    line += kept.length
    i += part.length
  }
  const takeString = (end: RegExp) => {
    const rest = text.slice(i)
    const value = end.exec(rest)?.[0] ?? rest
    strings.push({ value, line })
    take(value, true)
  }
  /** From inside a template to its end or its next `${`. */
  const takeTemplate = () => {
    takeString(/^(?:\\[\s\S]|\$(?!\{)|[^\\`$])*/)
    if (text.startsWith('${', i)) {
      take('${')
      depth += 1
      templates.push(depth)
    } else take('`')
  }
  while (i < text.length) {
    const rest = text.slice(i, i + 2)
    const sign = text[i]!
    if (rest === '//') drop(/^[^\n]*/.exec(text.slice(i))![0])
    else if (rest === '/*') drop(/^\/\*[\s\S]*?(?:\*\/|$)/.exec(text.slice(i))![0])
    else if (sign === "'" || sign === '"') {
      // In the text of an element an apostrophe begins no string: one never runs over the end of a line.
      const closed = new RegExp(`^${sign}(?:\\\\.|[^\\\\\\n${sign}])*${sign}`).exec(text.slice(i))
      if (closed === null) take(sign)
      else {
        strings.push({ value: closed[0].slice(1, -1), line })
        take(closed[0], true)
      }
    } else if (sign === '`') {
      take('`')
      takeTemplate()
    } else if (sign === '/' && /[(,=:[!&|?{};\n]\s*$/.test(bare.slice(-40)))
      take(/^\/(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n])*\/?[a-z]*/.exec(text.slice(i))![0], true)
    else {
      if (sign === '{') depth += 1
      if (sign === '}') {
        const closesTemplate = templates.at(-1) === depth
        depth -= 1
        if (closesTemplate) {
          templates.pop()
          take('}')
          takeTemplate()
          continue
        }
      }
      take(sign)
    }
  }
  // Imports are read from the code: their names stand in strings there.
  return { code, bare, strings }
}
