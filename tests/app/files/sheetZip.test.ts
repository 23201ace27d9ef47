import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { strFromU8, unzipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { crewZip, type PackedSet, type PackStep, setName } from '../../../src/app/files/sheetZip'
import { evaluate } from '../../../src/evaluate/evaluate'
import { readLayout } from '../../../src/layout/file'
import type { Layout } from '../../../src/layout/schema'
import { sheets } from '../../../src/sheets'
import { issuePapers } from '../../../src/layout/issues'
import { movePartsBy } from '../../../src/layout/edits'
import { onPaper } from '../../../src/sheets/onPaper'
import { scenarios } from '../../support/scenarios'

const setOf = (layout: Layout): PackedSet => ({
  plan: { now: evaluate(layout), issued: undefined },
  sheets,
  dateText: '2027-05-01',
  issue: '3',
  units: layout.settings.units,
})

const packed = async (set: PackedSet): Promise<{ bytes: Uint8Array; steps: readonly PackStep[] }> => {
  const steps: PackStep[] = []
  const walk = crewZip(set)
  for (;;) {
    const step = await walk.next()
    if (step.done) return { bytes: step.value, steps }
    steps.push(step.value)
  }
}

const leanTo = scenarios['lintel-lane-lean-to']!()

describe('the whole set as one file', async () => {
  const { bytes, steps } = await packed(setOf(leanTo))
  const files = unzipSync(bytes)
  const names = Object.keys(files)
  const rooted = (name: string) => `lintel-lane-lean-to-issue-3/${name}`

  test('unpacks to one folder, with the layout, the report and a word on what is what', () => {
    for (const name of names) expect(name).toMatch(/^lintel-lane-lean-to-issue-3\/[\w./-]+$/)
    const layout = readLayout(strFromU8(files[rooted('lintel-lane-lean-to.bay.json')]!))
    expect(layout).toEqual({ ok: true, layout: leanTo })
    expect(JSON.parse(strFromU8(files[rooted('report.json')]!))).toMatchObject({
      format: 'kerf-and-fall/report',
      bay: { title: 'Lintel Lane lean-to', towers: 12 },
    })
    const about = strFromU8(files[rooted('README.txt')]!)
    const folders = names.map((name) => name.split('/')).filter(({ length }) => length === 3)
    for (const [, folder] of folders) expect(about).toContain(`  ${folder} `)
    expect(about).toContain('Local codes and licensed people have the last word.')
  })

  test('has the pages of the floor sheet to look at and for CAD', () => {
    const stem = rooted('01-FS-floor/FS-floor-issue-3-page-1')
    expect(strFromU8(files[`${stem}.svg`]!)).toMatch(/^<svg /)
    expect(strFromU8(files[`${stem}.dxf`]!)).toMatch(/^0\r?\nSECTION/)
  })

  test('has every table for spreadsheets', () => {
    const tables = names.filter((name) => name.endsWith('.csv'))
    expect(tables.length).toBeGreaterThan(0)
    for (const name of tables) expect(strFromU8(files[name]!).length).toBeGreaterThan(10)
  })

  test('is packed a sheet a step, with what is done told', () => {
    expect(steps.map(({ title }) => title)).toEqual([
      ...sheets.map(({ title }) => title),
      'The plan in numbers',
    ])
    expect(steps.map(({ done, of }) => `${done} of ${of}`)).toEqual(
      steps.map((_, index) => `${index} of ${steps.length}`),
    )
  })

  test('is the same to the byte when it is packed again', async () => {
    const again = await packed(setOf(scenarios['lintel-lane-lean-to']!()))
    expect(Buffer.compare(Buffer.from(bytes), Buffer.from(again.bytes))).toBe(0)
  })

  test('is a zip to another program too, where there is one', () => {
    const folder = mkdtempSync(join(tmpdir(), 'papers-'))
    try {
      const file = join(folder, 'papers.zip')
      writeFileSync(file, bytes)
      const listed = spawnSync('unzip', ['-t', file], { encoding: 'utf8' })
      // Not every machine has it; the reader above has seen the file all the same.
      if (listed.error === undefined) expect(listed.stdout).toContain('No errors detected')
    } finally {
      rmSync(folder, { recursive: true })
    }
  })

  test('can be stopped between two sheets', async () => {
    const walk = crewZip(setOf(leanTo))
    await walk.next()
    await walk.return(new Uint8Array())
    expect(await walk.next()).toEqual({ done: true, value: undefined })
  })

  test('takes pictures of the pages where it is given a way to make them', async () => {
    const picture = async () => Uint8Array.of(137, 80, 78, 71)
    const { bytes: with_ } = await packed({ ...setOf(leanTo), sheets: sheets.slice(0, 1), picture })
    expect(unzipSync(with_)[rooted('01-FS-floor/FS-floor-issue-3-page-1.png')]).toEqual(
      Uint8Array.of(137, 80, 78, 71),
    )
  })
})

test.each([
  ['Bay: A/B\\C', '3', 'bay-a-b-c-issue-3'],
  ['../../etc', 'draft of 4', 'etc-draft-of-4'],
  ['🌱🌱', '3', 'bay-issue-3'],
  ['Crème brûlée', '12', 'creme-brulee-issue-12'],
  ['CON', '', 'con-draft'],
])('a set of %s, issue %s, is called %s', (title, issue, name) => {
  expect(setName(title, issue)).toBe(name)
})

test('a set that is packed at once after a change still says which papers it makes wrong', async () => {
  const issued = issuePapers(leanTo, { date: '2027-05-01', note: '', sheets: ['floor'] })
  if (!issued.ok) throw new Error(issued.sentence)
  const row = leanTo.parts.find(({ kind }) => kind === 'rack-row')!
  const moved = movePartsBy(issued.layout, [row.id], 254, 0)
  const { bytes } = await packed({ ...setOf(moved), plan: onPaper(evaluate(moved)) })
  const [name] = Object.keys(unzipSync(bytes)).filter((each) => each.endsWith('-sheets.csv'))
  expect(strFromU8(unzipSync(bytes)[name!]!)).toMatch(/\r\nFS,Floor sheet,Everyone,Superseded,/)
})
