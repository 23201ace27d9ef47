import { bench, describe } from 'vitest'
import { cutLists } from '../../src/evaluate/6-cutting'
import type { Built, Stick } from '../../src/model/built'
import { firstPlan } from '../../src/solvers/cutting/firstPlan'
import { lowerBound } from '../../src/solvers/cutting/lowerBound'
import { madeBy } from '../../src/solvers/cutting/plan'
import type { Piece } from '../../src/solvers/cutting/problem'
import { inches } from '../../src/units/length'
import { cutFrom, inch, pieces, sampleLumber } from '../solvers/cutting/sampleLumber'

const stocksIn = [120, 144]
const bay = cutFrom(stocksIn, sampleLumber())
const acre = cutFrom(stocksIn, sampleLumber(18))

// Goals for the first answer and its bound together: 3 ms at the sample bay, 10 ms at the acre.
describe('first cutting plan and bound', () => {
  bench('cutting plan and bound, sample bay, 438 pieces', () => {
    firstPlan(bay)
    lowerBound(bay)
  })
  bench('cutting plan and bound, one acre, 7,884 pieces', () => {
    firstPlan(acre)
    lowerBound(acre)
  })
  const framing = cutFrom(
    [96, 120, 144, 168, 192],
    Array.from({ length: 30 }, (_, i) => pieces(1 + ((i * 7) % 13), 9 + i * 3.4375)),
  )
  bench('cutting plan and bound, 30 lengths from five stocks', () => {
    firstPlan(framing)
    lowerBound(framing)
  })
  const priced = [430, 520, 610, 745, 820]
  const leftovers = [22, 31.5, 40, 47, 60, 73.25].map((lengthIn) => ({
    lengthTicks: inch(lengthIn),
    cost: 0,
    most: 2,
  }))
  const bought = {
    ...framing,
    stocks: [...framing.stocks.map((stock, i) => ({ ...stock, cost: priced[i] ?? 0 })), ...leftovers],
  }
  bench('cutting plan and bound, 30 lengths from five priced stocks and leftovers', () => {
    const plan = firstPlan(bought)
    lowerBound(madeBy(plan, bought))
  })
})

const stickOf = ({ lengthTicks }: Piece, mark: string): Stick => ({
  mark,
  stock: 'lumber-2x4',
  lengthMm: lengthTicks / 320,
  from: { x: 0, y: 0, z: 0 },
  to: { x: lengthTicks / 320, y: 0, z: 0 },
  widthMm: inches(1.5),
  heightMm: inches(3.5),
  cut: { kind: 'exact' },
  minusMm: 0,
  holes: [],
  rack: 0,
})

const partOf = (name: string): Built => ({
  part: name,
  zFrom: 'rack-datum',
  sticks: sampleLumber().flatMap((piece, i) =>
    Array.from({ length: Math.ceil(piece.count / 6) }, () => stickOf(piece, `M${i}`)),
  ),
  tubes: [],
  fittings: [],
  bodies: [],
  mouths: [],
  supports: [],
})

// One row is a new object each time, as in a drag; all others are as they were.
describe('cut lists while a row is dragged', () => {
  const given = {
    settings: { kerfMm: inches(1 / 8), trimMm: 0, lumberMm: stocksIn.map(inches) },
    bench: { measured: [], leftovers: [], cut: [], sawn: [] },
    counter: { book: [], quotes: [] },
  }
  for (const rows of [6, 108]) {
    const still = Array.from({ length: rows - 1 }, (_, i) => partOf(`rack-row-${i + 2}`))
    const dragged = partOf('rack-row-1')
    bench(`cut lists of ${rows} rows, one dragged`, () => {
      cutLists([{ ...dragged }, ...still], given)
    })
  }
})
