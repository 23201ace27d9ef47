// npm start: from a fresh checkout to a running planner.
import './node.mjs'
import { top } from './command.mjs'
import { install } from './install.mjs'

/** Where the search for a free port begins. */
const FIRST_PORT = 4173

if (!(await install())) {
  console.error('The packages could not be installed; npm says why above.')
  process.exit(1)
}

// Loaded only now: on a fresh machine vite was not there before.
const { build, preview } = await import('vite')
await build({ root: top, logLevel: 'warn' })
const server = await preview({ root: top, logLevel: 'warn', preview: { port: FIRST_PORT } })
console.log(`\nKerf & Fall is at ${server.resolvedUrls.local[0]} (Ctrl-C ends it)\n`)
