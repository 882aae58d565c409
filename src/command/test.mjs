import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ROOT, setUpPackages } from './setUp.mjs'

/**
 * What Debian brings and no package does: the program, the Debian package, and what is skipped without it. `here` is a line of the shell that
 * holds where it is at hand, for what is no program of its own: Debian's modules belong to Debian's python3, and another may come first.
 */
const FROM_DEBIAN = [
  { program: 'chromium', debian: 'chromium', skipped: 'the walks then use the Chromium that comes as a package' },
  { program: 'pdftotext', debian: 'poppler-utils', skipped: 'the walks then do not read the printed pages' },
  {
    program: 'ezdxf',
    debian: 'python3-ezdxf',
    here: 'python3 -c "import ezdxf" || /usr/bin/python3 -c "import ezdxf"',
    skipped: 'the files for other drawing programs are then read by one reader less',
  },
]

const bin = (name) => join(ROOT, 'node_modules', '.bin', name)
const counts = { passed: 0, failed: 0, skipped: 0 }
const failures = []

/**
 * Runs one command in the project's folder, everything it says shown.
 *
 * @param {string} title
 * @param {string} command
 * @param {readonly string[]} args
 */
function run(title, command, args) {
  console.log(`\n== ${title}`)
  const started = Date.now()
  const { status } = spawnSync(command, args, { cwd: ROOT, stdio: ['ignore', 'inherit', 'inherit'] })
  console.log(`   ${status === 0 ? 'good' : 'FAILED'} after ${Math.round((Date.now() - started) / 1000)} s`)
  return status === 0
}

/** A check that counts as one. */
function check(title, command, args) {
  const passed = run(title, command, args)
  counts[passed ? 'passed' : 'failed'] += 1
  if (!passed) failures.push(title)
  return passed
}

/** A run of tests, counted one by one; a file that cannot even be loaded counts as one that failed. */
function suite(title, args) {
  const folder = mkdtempSync(join(tmpdir(), 'ribwright-test-'))
  const file = join(folder, 'results.json')
  const passed = run(title, bin('vitest'), [
    'run',
    ...args,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ])
  const before = counts.failed
  try {
    const results = JSON.parse(readFileSync(file, 'utf8'))
    counts.passed += results.numPassedTests
    counts.failed += results.numFailedTests
    counts.skipped += results.numPendingTests + results.numTodoTests
    counts.failed += results.testResults.filter(
      (one) => one.status === 'failed' && one.assertionResults.length === 0,
    ).length
    if (results.numPassedTests === 0) counts.failed += 1
  } catch {
    counts.failed += 1
  }
  rmSync(folder, { recursive: true, force: true })
  if (!passed && counts.failed === before) counts.failed += 1
  if (counts.failed > before) failures.push(title)
}

/** Brings in what only Debian has, in CI or as root on Debian; in CI its absence fails, elsewhere it is said. */
function setUpDebian() {
  const inCi = process.env.CI === 'true'
  const has = ({ program, here = `command -v ${program}` }) =>
    spawnSync('sh', ['-c', here], { stdio: 'ignore' }).status === 0
  const missing = () => FROM_DEBIAN.filter((one) => !has(one))
  if (missing().length === 0) return
  if (existsSync('/etc/debian_version') && (inCi || process.getuid?.() === 0)) {
    run('what only Debian has', 'sh', [
      '-c',
      `apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends ${missing()
        .map(({ debian }) => debian)
        .join(' ')} > /dev/null`,
    ])
  }
  for (const { program, debian, skipped } of missing()) {
    if (inCi) {
      counts.failed += 1
      failures.push(`${program} is missing, and could not be installed (Debian package ${debian})`)
    } else console.log(`Skipped: ${program} is not here (Debian package ${debian}); ${skipped}.`)
  }
}

try {
  setUpPackages({ loud: true })
} catch (fault) {
  console.error(fault instanceof Error ? fault.message : String(fault))
  console.log('0 passed, 1 failed')
  process.exit(1)
}
setUpDebian()

check('types', bin('tsc'), ['-p', 'tsconfig.json'])
check('types of the core, which knows no browser', bin('tsc'), ['-p', 'src/core/tsconfig.json'])
check('lint', bin('oxlint'), ['--type-aware', 'src', 'tests', 'vite.config.ts'])
check('format', bin('biome'), ['format', 'src', 'tests', 'vite.config.ts'])
check('nothing unused', bin('knip'), [])
suite('unit, property, component and house tests', [])
if (check('build', bin('vite'), ['build', '--logLevel', 'warn']))
  suite('walks in Chromium', ['--config', 'tests/journeys/vitest.config.ts'])
else failures.push('walks in Chromium: there is no build to walk through')

if (failures.length > 0) console.log(`\nFailed:\n${failures.map((title) => `  ${title}`).join('\n')}`)
console.log(
  `\n${counts.passed} passed, ${counts.failed} failed${counts.skipped > 0 ? `, ${counts.skipped} skipped` : ''}`,
)
process.exitCode = counts.failed > 0 || failures.length > 0 ? 1 : 0
