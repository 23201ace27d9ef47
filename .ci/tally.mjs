import { existsSync, readFileSync } from 'node:fs'

const read = (path) => (existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined)

/** A suite whose report is missing ran into something worse than a failed test: that counts as one. */
const noReport = { passed: 0, failed: 1 }

/** Test counts of vitest's JSON report. A file that could not even be loaded has no tests and counts as one failed. */
export const vitestTally = (path) => {
  const report = read(path)
  if (report === undefined) return noReport
  const unloaded = report.testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && assertionResults.every((test) => test.status !== 'failed'),
  )
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded.length }
}

/** Test counts of Playwright's JSON report; `errors` are those outside any test, such as a server that did not start. */
export const playwrightTally = (path) => {
  const report = read(path)
  if (report === undefined) return noReport
  const { expected, unexpected, flaky } = report.stats
  return { passed: expected, failed: unexpected + flaky + report.errors.length }
}

export const sum = (tallies) =>
  tallies.reduce((all, { passed, failed }) => ({ passed: all.passed + passed, failed: all.failed + failed }))
