import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, test } from 'vitest'

/** The command as a shell runs it, from a folder of its own: what it prints, says beside it and ends with. */

const script = fileURLToPath(new URL('../../.ci/report.mjs', import.meta.url))
const bays = fileURLToPath(new URL('../../public/bays/', import.meta.url))
const here = mkdtempSync(join(tmpdir(), 'report-'))
afterAll(() => rmSync(here, { recursive: true }))

const leanTo = join(bays, 'lintel-lane-lean-to.json')

const run = (given: readonly string[], input = '') => {
  const ended = spawnSync(process.execPath, [script, ...given], {
    cwd: here,
    input,
    encoding: 'utf8',
    maxBuffer: 100_000_000,
    env: { ...process.env, INIT_CWD: here },
  })
  return { code: ended.status, out: ended.stdout, beside: ended.stderr }
}

/** One sentence, on one line. */
const expectSentence = (text: string): void => expect(text).toMatch(/^[^\n]+\.\n$/)

describe('npm run report', () => {
  test('prints the report and nothing else, the same bytes each time, and ends with 1 where something fails', () => {
    const first = run([leanTo, '--format', 'json', '--date', '2027-05-01'])
    expect(JSON.parse(first.out)).toMatchObject({ format: 'kerf-and-fall/report', version: 1, of: 'bay' })
    expect(run([leanTo, '--format', 'json', '--date', '2027-05-01'])).toEqual(first)
    const { failing } = JSON.parse(first.out) as { failing: { fails: boolean } }
    expect(first.code).toBe(failing.fails ? 1 : 0)
    if (failing.fails) expectSentence(first.beside)
  })

  test('reads what comes in', () => {
    expect(run(['-', '--format', 'csv', '--table', 'bay'], readFileSync(leanTo, 'utf8')).out).toContain(
      'Lintel Lane lean-to',
    )
  })

  test('writes a file a table into a folder that it makes, and prints nothing', () => {
    const { code, out } = run([leanTo, '--format', 'csv', '--out', 'deep/er', '--fail', 'Spills'])
    expect([code, out]).toEqual([0, ''])
    const files = readdirSync(join(here, 'deep/er'))
    expect(files).toContain('takeOff.csv')
    expect(files.length).toBe(26)
  })

  test('writes the pages of one paper', () => {
    const { out } = run([leanTo, '--sheet', 'FS', '--format', 'svg', '--out', 'pages', '--paper', 'A4'])
    expect(out).toBe('')
    const [page = ''] = readdirSync(join(here, 'pages'))
    expect(page).toBe('FS-floor-draft-of-1-page-1.svg')
    expect(readFileSync(join(here, 'pages', page), 'utf8')).toContain('width="210mm" height="297mm"')
  })

  test.each([
    ['a file that is not there', ['nowhere.json'], /could not be read: there is no such file/],
    ['a folder', ['.'], /could not be read: it is a folder/],
    [
      'a file of another kind',
      [fileURLToPath(new URL('../../package.json', import.meta.url))],
      /not a Kerf & Fall layout/,
    ],
    ['a paper that there is none of', [leanTo, '--sheet', 'poster'], /There is no paper “poster”/],
    ['a flag that there is none of', [leanTo, '--pretty'], /There is no flag “--pretty”/],
    ['several tables without a folder', [leanTo, '--format', 'csv'], /name one with --table/],
    ['a table that there is none of', [leanTo, '--format', 'csv', '--table', 'x'], /There is no table “x”/],
    ['several pages without a folder', [leanTo, '--format', 'svg'], /--out/],
    ['a folder under a file', [leanTo, '--out', 'taken/in'], /The folder taken\/in could not be made/],
  ])('%s: one sentence beside, nothing printed, ends with 2', (_, given, says) => {
    writeFileSync(join(here, 'taken'), '')
    const { code, out, beside } = run(given)
    expect([code, out]).toEqual([2, ''])
    expectSentence(beside)
    expect(beside).toMatch(says)
  })

  test('a disk that is full: one sentence, ends with 2', () => {
    // Only some systems have such a file; elsewhere there is nothing to be shown.
    if (!existsSync('/dev/full')) return
    const ended = spawnSync('sh', ['-c', `"${process.execPath}" "${script}" "${leanTo}" > /dev/full`], {
      encoding: 'utf8',
    })
    expect(ended.status).toBe(2)
    expect(ended.stderr).toBe('The report could not be printed: the disk is full.\n')
  })
})
