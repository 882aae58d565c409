/** Steps from a document row down to one value: ['doc', 'plan', 'rim', 'depthAtTailMm']. */
export type Path = readonly string[]

export type Found = { readonly here: true; readonly value: unknown } | { readonly here: false }

/** True for what JSON calls an object: no array, no null, no class of its own. */
export function isPlainObject(value: unknown): value is Record<string, unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false
  const kind: unknown = Object.getPrototypeOf(value)
  return kind === Object.prototype || kind === null
}

/** The value at a path, following own keys of plain objects only; `here: false` where the path leads nowhere. */
export function valueAt(root: unknown, path: Path): Found {
  let value = root
  for (const step of path) {
    if (!isPlainObject(value) || !Object.hasOwn(value, step)) return { here: false }
    value = value[step]
  }
  return { here: true, value }
}

/** A copy of `root` with one value set, or taken away; null where the way to it is missing. Untouched branches are shared. */
export function withValueAt(root: unknown, path: Path, next: Found): unknown {
  const [step, ...rest] = path
  if (step === undefined) return next.here ? next.value : null
  if (!isPlainObject(root)) return null
  if (rest.length > 0) {
    if (!Object.hasOwn(root, step)) return null
    const inner = withValueAt(root[step], rest, next)
    return inner === null ? null : { ...root, [step]: inner }
  }
  if (next.here) return { ...root, [step]: next.value }
  const { [step]: _gone, ...kept } = root
  return kept
}

export function samePath(a: Path, b: Path): boolean {
  return a.length === b.length && a.every((step, i) => step === b[i])
}

/** True where setting one of the two paths touches the other: they are the same, or one lies inside the other. */
export function pathsOverlap(a: Path, b: Path): boolean {
  const shared = Math.min(a.length, b.length)
  for (let i = 0; i < shared; i += 1) if (a[i] !== b[i]) return false
  return true
}

/** A path inside `doc` as one dotted name, as findings, drafts and problems use it: 'plan.rim.depthAtTailMm'. */
export function fieldName(path: Path): string {
  return (path[0] === 'doc' && path.length > 1 ? path.slice(1) : path).join('.')
}

/** Equal as JSON is equal: the order of keys does not count. */
export function sameJson(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (Array.isArray(a) && Array.isArray(b)) return a.length === b.length && a.every((one, i) => sameJson(one, b[i]))
  if (!isPlainObject(a) || !isPlainObject(b)) return false
  const keys = Object.keys(a)
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && sameJson(a[key], b[key]))
}
