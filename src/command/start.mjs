import { networkInterfaces } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { buildPages, ROOT, setUpPackages } from './setUp.mjs'
import { makeStaticServer } from './staticServer.mjs'

const HELP = `npm start [-- --port 4173] [-- --lan]
  --port N   the port to serve at (4173)
  --lan      also to other devices in the same network; see the README before you rely on it
`

function start() {
  const { values } = parseArgs({
    options: { port: { type: 'string', default: '4173' }, lan: { type: 'boolean' }, help: { type: 'boolean' } },
  })
  if (values.help) return process.stdout.write(HELP)
  const port = Number(values.port)
  if (!Number.isInteger(port) || port < 1 || port > 65535)
    throw new Error('--port needs a whole number from 1 to 65535.')

  setUpPackages({ loud: true })
  buildPages()

  const server = makeStaticServer(join(ROOT, 'dist'))
  server.on('error', (fault) => {
    fail(fault.code === 'EADDRINUSE' ? `Port ${port} is taken. Try: npm start -- --port ${port + 1}` : fault.message)
  })
  server.listen(port, values.lan ? '0.0.0.0' : '127.0.0.1', () => {
    const others = values.lan ? ownAddresses().map((address) => `http://${address}:${port}/`) : []
    console.log(`Ribwright is at http://localhost:${port}/${others.length > 0 ? ` and at ${others.join(' ')}` : ''}`)
    if (values.lan)
      console.log(
        'Over plain http a browser on another device gives no promise to keep what is stored, does not work without a net, and lets two tabs write at once: ' +
          'save your commissions to files, or put the folder dist on an https host.',
      )
  })
}

/** Addresses of this machine that others in the network can reach. */
const ownAddresses = () =>
  Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address)

/** @param {string} sentence */
function fail(sentence) {
  console.error(sentence)
  process.exit(1)
}

try {
  start()
} catch (fault) {
  fail(fault instanceof Error ? fault.message : String(fault))
}
