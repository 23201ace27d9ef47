import { bench, describe } from 'vitest'
import type { Network, Solution } from '../../src/solvers/water/network'
import { solve } from '../../src/solvers/water/solve'
import { acre } from '../solvers/water/acre'
import { engineText, startEngine } from '../solvers/water/engine'

const solved = (network: Network): Solution => {
  const solution = solve(network)
  if (!solution.ok) throw new RangeError(solution.sentence)
  return solution
}

const engine = await startEngine()

// Goals with nothing known before: 1 ms at 2,000 towers, 8 ms at 20,000, 20 ms at 50,000; and at every size less than an
// independent engine compiled to WASM takes, with the building of the network and without.
for (const towers of [20, 250, 2000, 20_000, 50_000]) {
  const name = `${towers.toLocaleString('en-US')} towers`
  describe(`water of ${name}`, () => {
    const network = acre({ towers })
    const text = engineText(network, 20, 'usual')
    bench(`water, ${name}, built and solved`, () => {
      solve(acre({ towers }))
    })
    bench(`water, ${name}, solved`, () => {
      solve(network)
    })
    const run = engine.runner(text)
    bench(
      `water, ${name}, built and solved, by the independent engine`,
      () => {
        engine.run(engineText(acre({ towers }), 20, 'usual'))
      },
      { time: 300, iterations: 3 },
    )
    bench(`water, ${name}, solved, by the independent engine`, run, { time: 300, iterations: 3 })
  })
}

// Goal: 2 ms. The valve and the row come back every other frame, as in a drag, and each frame starts from the one before.
describe('water after a change', () => {
  const frames = (changed: Network, still: Network): (() => void) => {
    let last = solved(still)
    let frame = 0
    return () => {
      frame += 1
      const next = solve(frame % 2 === 0 ? still : changed, {}, last)
      if (next.ok) last = next
    }
  }
  for (const towers of [2000, 20_000]) {
    const still = acre({ towers })
    const name = `${towers.toLocaleString('en-US')} towers`
    const row = Math.round(towers / 300)
    bench(
      `water, ${name}, one valve moved`,
      frames(acre({ towers, valveK: (at) => (at === row ? 60 : 4) }), still),
    )
    bench(
      `water, ${name}, one row moved up 10 mm`,
      frames(acre({ towers, higherM: (at) => (at === row ? 0.01 : 0) }), still),
    )
    bench(`water, ${name}, nothing moved`, frames(still, still))
  }
  const rings = acre({ towers: 20_000, hasRings: true })
  bench('water, 20,000 towers in rings, solved', () => {
    solve(rings)
  })
})
