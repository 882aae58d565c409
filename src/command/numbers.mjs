import { readFileSync } from 'node:fs'
import { basename, resolve } from 'node:path'
import { ROOT, setUpPackages } from './setUp.mjs'

/** npm runs a script in the project's folder; a file is named from where the maker stands. */
const HERE = process.env.INIT_CWD ?? process.cwd()

async function main() {
  const [file, ...more] = process.argv.slice(2)
  if (file === undefined || more.length > 0)
    throw new Error('Name one saved commission: npm run --silent numbers -- FILE')
  let text
  try {
    text = readFileSync(resolve(HERE, file), 'utf8')
  } catch {
    throw new Error(`${basename(file)} cannot be read: there is no such file, or it may not be opened.`)
  }
  setUpPackages()
  const { runnerImport } = await import('vite')
  const { module } = await runnerImport(resolve(ROOT, 'src/command/numbers.ts'), {
    root: ROOT,
    configFile: false,
    logLevel: 'silent',
  })
  const written = module.writeNumbers(text)
  if (!written.ok) throw new Error(`${basename(file)}: ${written.problem}`)
  process.stdout.write(`${written.value}\n`)
}

main().catch((fault) => {
  const sentence = fault instanceof Error ? fault.message : String(fault)
  process.stderr.write(`${sentence.replaceAll(/\s+/g, ' ')}\n`)
  process.exitCode = 1
})
