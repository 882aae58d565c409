import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

/** An import or a re-export that fetches something: types are gone before anything is fetched, and `import()` comes later. */
const IMPORT = /^(?:import|export)\s+(?!type\b)(?:([^'"]*?)\s+from\s+)?'(\.[^']+)'/gmu

/** Every file that comes with one: itself, what it imports, and what that imports, as paths from the folder both are named from. */
export function staticImports(entry: string, found: Set<string> = new Set()): ReadonlySet<string> {
  if (found.has(entry) || !existsSync(entry)) return found
  found.add(entry)
  if (!/\.tsx?$/u.test(entry)) return found
  for (const [, names = '', target = ''] of readFileSync(entry, 'utf8').matchAll(IMPORT))
    if (!isTypesOnly(names)) staticImports(join(dirname(entry), target), found)
  return found
}

/** `import { type A, type B }` */
function isTypesOnly(names: string): boolean {
  const inside = /^\{([^}]*)\}$/su.exec(names.trim())?.[1]
  if (inside === undefined) return false
  return inside.split(',').every((name) => name.trim() === '' || name.trim().startsWith('type '))
}
