import type { CutList } from '../model/cutList'
import { rememberEach } from '../model/remember'
import type { Proof } from '../solvers/cutting/proof'
import { planned } from './cutting/planned'
import { standingOf } from './cutting/standing'

const proved = rememberEach<CutList, Proof, CutList>((list, proof) => {
  const plan = planned(proof.plan, list)
  const bound = Math.max(list.bound, proof.bound)
  const standing = proof.proven.cost ? { kind: 'proven' as const } : standingOf(plan.cost, bound, 'within')
  return { ...list, ...plan, bound, standing }
})

/**
 * The list with the plan and the standing that a proof of it gives; the very list where nothing is proved. The same list and
 * proof always give the same object.
 */
export const withProof = (list: CutList, proof: Proof | undefined): CutList =>
  proof === undefined ? list : proved(list, proof)
