import { existsSync } from 'node:fs'
import { platform } from 'node:os'

const INSTALLED = {
  linux: ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
}

/** The arguments every browser here is started with: nothing of its own over the network, and able to run as root. */
const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** An installed browser, named by CHROME_PATH or standing where it is usual; null where there is none. */
export function installedBrowser() {
  const named = process.env.CHROME_PATH
  if (named !== undefined && named !== '') {
    if (existsSync(named)) return named
    throw new Error(`CHROME_PATH names ${named}, where there is no file.`)
  }
  return (INSTALLED[platform()] ?? []).find((path) => existsSync(path)) ?? null
}

/**
 * How a Chromium for walks and measurements is started: CHROME_PATH, else an installed one, else the one that comes as a package (Linux on x64).
 *
 * @returns {Promise<{ executablePath: string, args: string[] }>}
 */
export async function launchOptions() {
  const installed = installedBrowser()
  if (installed !== null) return { executablePath: installed, args: QUIET }
  if (platform() === 'linux' && process.arch === 'x64') {
    // Says which system libraries to unpack; has to be set before the package is loaded.
    process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs20.x'
    const { default: packed } = await import('@sparticuz/chromium')
    return { executablePath: await packed.executablePath(), args: QUIET }
  }
  throw new Error('There is no Chromium here: install Chromium or Chrome, or name one in CHROME_PATH.')
}

/**
 * @returns {Promise<import('playwright-core').Browser>}
 */
export async function launchBrowser() {
  const { chromium } = await import('playwright-core')
  return chromium.launch(await launchOptions())
}
