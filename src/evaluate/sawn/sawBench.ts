import type { Bench } from '../../layout/bench'
import { wantedByStock } from '../6-cutting'
import type { Evaluation } from '../evaluation'
import { holeHeights, type HolesOf } from './holeHeights'
import { whatsCut, type CutOfStock } from './whatsCut'

/** What the saw bench has done, held against the bay as it stands. */
export interface SawBench {
  readonly bench: Bench
  readonly cut: readonly CutOfStock[]
  readonly holesOf: HolesOf
}

export const sawBenchOf = ({ bay, layout }: Pick<Evaluation, 'bay' | 'layout'>): SawBench => {
  const all = [...bay.built, ...bay.joinedPipes]
  const holesOf = holeHeights(all)
  return {
    bench: layout.bench,
    cut: whatsCut(wantedByStock(all, layout), layout.bench.cut, holesOf),
    holesOf,
  }
}
