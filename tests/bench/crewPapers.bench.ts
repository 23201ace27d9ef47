import { bench, describe } from 'vitest'
import { crewZip } from '../../src/app/files/sheetZip'
import { evaluate } from '../../src/evaluate/evaluate'
import { sheets } from '../../src/sheets'
import { chosenOptions } from '../../src/sheets/chosenOptions'
import { pagesOf } from '../../src/sheets/pagesOf'
import { scenarios } from '../support/scenarios'

/** Papers of a bay of 10,368 towers and of a house of 480, made from nothing but the evaluated plan. */
describe.each(['sallow-flats-one-acre', 'kestrel-bend-house-2'])('papers of %s', (name) => {
  const layout = scenarios[name]!()
  const plan = { now: evaluate(layout), issued: undefined }
  const made = { dateText: '2027-05-01', issue: '1' }

  bench(
    'all pages',
    () => {
      for (const sheet of sheets) pagesOf(sheet, plan, chosenOptions(sheet, layout, made))
    },
    { iterations: 3, time: 0, warmupIterations: 0, warmupTime: 0 },
  )

  bench(
    'the whole set as a zip',
    async () => {
      const walk = crewZip({ plan, sheets, ...made, units: layout.settings.units })
      while (!(await walk.next()).done);
    },
    { iterations: 3, time: 0, warmupIterations: 0, warmupTime: 0 },
  )
})
