import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { bench, describe } from 'vitest'
import { water } from '../../src/evaluate/4-water'
import { evaluate } from '../../src/evaluate/evaluate'
import { balance } from '../../src/evaluate/water/balance'
import { governs } from '../../src/evaluate/water/governs'
import type { WaterInputs } from '../../src/evaluate/water/plan'
import { readLayout } from '../../src/layout/file'
import type { Built } from '../../src/model/built'
import type { PartId } from '../../src/model/ids'

const opened = (id: string): WaterInputs => {
  const read = readLayout(readFileSync(join(import.meta.dirname, `../../public/bays/${id}.json`), 'utf8'))
  if (!read.ok) throw new RangeError(read.sentence)
  return evaluate(read.layout).bay
}

/** The same built thing as a new object, as if it had been derived again. */
const anew = (built: Built): Built => (built.feed ? { ...built, feed: { ...built.feed } } : built)

const rederived = (inputs: WaterInputs, which: (part: PartId) => boolean): WaterInputs => {
  const built = inputs.built.map((each) => (which(each.part) ? anew(each) : each))
  return { ...inputs, built, builtOf: new Map(built.map((each) => [each.part, each])) }
}

/** Tubes of one row a hair longer each time, so that no frame has the flows of the one before. */
const dragged = (inputs: WaterInputs): (() => void) => {
  const row = inputs.built.find(({ feed }) => feed)
  const feed = row?.feed
  if (!row || !feed) throw new RangeError('The bay has no row that is fed.')
  let frame = 0
  return () => {
    frame += 1
    const tubes = feed.tubes.map((tube) => ({ ...tube, lengthMm: tube.lengthMm + (frame % 40) }))
    const built = inputs.built.map((each) => (each === row ? { ...row, feed: { ...feed, tubes } } : each))
    water({ ...inputs, built, builtOf: new Map(built.map((each) => [each.part, each])) })
  }
}

const bays = [
  ['sample bay, 480 towers', opened('kestrel-bend-house-2')],
  ['one acre, 10,368 towers', opened('sallow-flats-one-acre')],
] as const

// Goals for step 4 alone, with one row changed: 2 ms at 480 towers, 12 ms at 10,368.
describe('water of a drawn bay', () => {
  for (const [name, inputs] of bays) {
    bench(`water of ${name}, one row changed`, dragged(inputs))
    bench(`water of ${name}, every row made anew`, () => {
      water(rederived(inputs, () => true))
    })
  }
})

// Asked for in the drawer, not in every frame.
describe('questions about the water', () => {
  for (const [name, inputs] of bays) {
    bench(`what governs, ${name}`, () => {
      governs(inputs)
    })
    bench(`balancing, ${name}`, () => {
      balance(inputs)
    })
  }
})
