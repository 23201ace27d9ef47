import type { CutList } from '../model/cutList'
import type { Proof } from '../solvers/cutting/proof'

/** The list with the plan and the standing that a proof of it gives; the very list where nothing is proved. */
export const withProof = (list: CutList, proof: Proof | undefined): CutList =>
  proof?.proven.cost ? { ...list, standing: { kind: 'proven' } } : list
