import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { launchBrowser } from './browser.mjs'
import { buildPages, ROOT, setUpPackages } from './setUp.mjs'
import { makeStaticServer } from './staticServer.mjs'

async function main() {
  setUpPackages({ loud: true })
  buildPages()
  const { runnerImport } = await import('vite')
  const load = async (name) =>
    (await runnerImport(join(ROOT, 'src/command', name), { root: ROOT, configFile: false, logLevel: 'silent' })).module
  const { measureSums } = await load('bench.ts')
  const { measureScreen } = await load('benchScreen.ts')
  const { measureDrag } = await load('benchDrag.ts')
  const { measurePack } = await load('benchPack.ts')
  const server = makeStaticServer(join(ROOT, 'dist'))
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve))
  const browser = await launchBrowser()
  let figures
  try {
    const address = `http://localhost:${server.address().port}/`
    figures = [
      ...measureSums(),
      ...(await measureScreen(browser, address)),
      ...(await measureDrag(browser, address)),
      ...(await measurePack(browser, address)),
    ]
  } finally {
    await browser.close()
    server.close()
  }
  const widest = Math.max(...figures.map(({ what }) => what.length))
  for (const { what, value, unit, most } of figures)
    console.log(
      `${what.padEnd(widest)}  ${value.toFixed(2).padStart(8)} ${unit.padEnd(3)}${most === null ? '' : `  at most ${most}${value > most ? '  OVER' : ''}`}`,
    )
  const folder = join(ROOT, '.bench')
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'figures.json'), `${JSON.stringify(figures, null, 2)}\n`)
}

main().catch((fault) => {
  console.error(fault instanceof Error ? fault.message : String(fault))
  process.exitCode = 1
})
