// npm test: every check of the project, in one go. A step that fails does not hide the ones after it.
import './node.mjs'
import { existsSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { findBrowser } from './browser.mjs'
import { run, runTool, top } from './command.mjs'
import { install } from './install.mjs'
import { findPoppler } from './poppler.mjs'
import { playwrightTally, sum, vitestTally } from './tally.mjs'

const UNIT_REPORT = join(top, '.cache/vitest.json')
const BROWSER_REPORT = join(top, '.cache/playwright.json')
const BUILT = join(top, 'dist')

const unitTests = () =>
  runTool('vitest', ['run', '--reporter=default', '--reporter=json', '--outputFile.json=.cache/vitest.json'])

const browserTests = async () => {
  if (!existsSync(join(BUILT, 'index.html'))) {
    console.error('Not run: there is no built app to test.')
    return false
  }
  const browser = await findBrowser()
  if (browser === undefined) {
    console.error(
      'No Chromium, Chrome or Edge was found and none could be installed. Name one in CHROMIUM_PATH.',
    )
    return false
  }
  await findPoppler()
  return runTool('playwright', ['test', '--config', 'e2e/playwright.config.ts'], { CHROMIUM_PATH: browser })
}

const build = async () =>
  (await runTool('vite', ['build', '--logLevel', 'warn'])) && run('node', ['.ci/firstPaint.mjs'])

const steps = [
  ['type check', () => runTool('tsc', ['--noEmit'])],
  ['lint', () => runTool('oxlint', ['--type-aware', '--deny-warnings'])],
  ['format', () => runTool('prettier', ['--check', '.'])],
  ['unused code', () => runTool('knip', [])],
  ['unit, property and reference tests', unitTests],
  ['build and size before first paint', build],
  ['browser tests', browserTests],
]

const runStep = async ([title, step]) => {
  console.log(`\n== ${title}`)
  const began = performance.now()
  const isGood = await step()
  return { title, isGood, seconds: (performance.now() - began) / 1000 }
}

if (!(await install())) {
  console.error('The packages could not be installed; npm says why above.')
  process.exit(1)
}
// What an earlier run left would pass for this one's.
for (const leftover of [UNIT_REPORT, BROWSER_REPORT, BUILT])
  rmSync(leftover, { force: true, recursive: true })

const results = []
for (const step of steps) results.push(await runStep(step))

console.log('\n== summary')
for (const { title, isGood, seconds } of results)
  console.log(`${isGood ? 'good  ' : 'FAILED'} ${seconds.toFixed(1).padStart(6)} s  ${title}`)

const { passed, failed } = sum([vitestTally(UNIT_REPORT), playwrightTally(BROWSER_REPORT)])
console.log(`\n${passed} passed, ${failed} failed`)
process.exit(failed === 0 && results.every(({ isGood }) => isGood) ? 0 : 1)
