/** One version of the program as it was built: every file of its folder. */
export interface Stock {
  /** The address of the folder, with its last slash. */
  readonly folder: string
  /** Differs where any file differs. */
  readonly version: string
  /** Paths from the folder, the page itself as '', each with the digest the browser checks what it was sent by. */
  readonly files: readonly (readonly [path: string, integrity: string])[]
}

type Fetch = (request: Request) => Promise<Response>

/** So many files are fetched at once: the page that is open may want the line too. */
const LANES = 4

/** Shelves of one folder begin alike; another copy of the program, under another path of the same host, has shelves of its own. */
const shelvesOf = ({ folder }: Stock): string => `ribwright ${new URL(folder).pathname} `
const shelfOf = (stock: Stock): string => shelvesOf(stock) + stock.version

/**
 * Lays every file of a version on a shelf of its own. What lies there already is not fetched again. Fails where one file cannot be had, or is not
 * the one that was built: then the version is not whole, and must not be used.
 */
export async function layBy(caches: CacheStorage, fetchFile: Fetch, stock: Stock): Promise<void> {
  const shelf = await caches.open(shelfOf(stock))
  const here = new Set((await shelf.keys()).map(({ url }) => url))
  const missing = stock.files.filter(([path]) => !here.has(stock.folder + path))
  const takeNext = async (): Promise<void> => {
    for (let next = missing.pop(); next !== undefined; next = missing.pop()) {
      const [path, integrity] = next
      // A name under assets/ changes with what is in the file; of all others the browser may hold an older one.
      const cache = path.startsWith('assets/') ? 'default' : 'no-cache'
      const response = await fetchFile(new Request(stock.folder + path, { integrity, cache }))
      if (!response.ok) throw new Error(`${path} was answered ${response.status}`)
      await shelf.put(stock.folder + path, response)
    }
  }
  await Promise.all(Array.from({ length: LANES }, takeNext))
}

/** Clears the shelves of all other versions of this folder. */
export async function clearOthers(caches: CacheStorage, stock: Stock): Promise<void> {
  const names = await caches.keys()
  const others = names.filter((name) => name.startsWith(shelvesOf(stock)) && name !== shelfOf(stock))
  await Promise.all(others.map((name) => caches.delete(name)))
}

/**
 * What is asked for, from the shelf; what does not lie there from the net; a page that is on neither is the workbench. So one version answers for
 * itself alone, and where it is whole the net is asked nothing.
 */
export async function answerFrom(
  caches: CacheStorage,
  fetchFile: Fetch,
  stock: Stock,
  request: Request,
): Promise<Response> {
  const shelf = await caches.open(shelfOf(stock))
  // Hosts send the same file whatever these headers say, and fonts are asked for in another mode than they were laid by in.
  const find = (address: string) => shelf.match(address, { ignoreVary: true })
  const { origin, pathname } = new URL(request.url)
  const address = origin + pathname
  const found = await find(address === `${stock.folder}index.html` ? stock.folder : address)
  if (found !== undefined) return found
  try {
    return await fetchFile(request)
  } catch (fault) {
    const page = request.mode === 'navigate' ? await find(stock.folder) : undefined
    if (page === undefined) throw fault
    return page
  }
}
