import { mayGain } from '../evaluate/cutting/mayGain'
import type { Judged } from '../evaluate/evaluation'
import { withProof } from '../evaluate/withProof'
import type { CutList } from '../model/cutList'
import { onPaper } from '../sheets/onPaper'
import type { PlanOnPaper } from '../sheets/sheet'
import { firstPlan } from '../solvers/cutting/firstPlan'
import type { Proof } from '../solvers/cutting/proof'
import { prove } from '../solvers/cutting/prove/prove'

const isOwed = (list: CutList): boolean =>
  list.boards.length > 0 && (list.standing.kind !== 'proven' || mayGain(list))

const proofOf = async (list: CutList): Promise<Proof | undefined> =>
  isOwed(list) ? prove(list.problem, firstPlan(list.problem)) : undefined

const provedList = async (list: CutList): Promise<CutList> => withProof(list, await proofOf(list))

/**
 * The plan with each of its cut lists proven, or as near to it as the own search comes within its work, which is counted in
 * steps: the same plan always gives the same boards. Lists that the page searches are searched, and no others.
 */
export const provedPlan = async (plan: Judged): Promise<Judged> => {
  const cuts: CutList[] = []
  for (const list of plan.cuts) cuts.push(await provedList(list))
  return { ...plan, cuts }
}

/** A plan that is proved, with the sets that were issued of it cut as well as it is. */
export const provedOnPaper = async (plan: Judged): Promise<PlanOnPaper> => {
  const { issued, since } = onPaper(plan)
  const proofs = new Map<string, Proof>()
  for (const list of [issued, since].flatMap((each) => each?.was.cuts ?? [])) {
    const proof = proofs.has(list.key) ? undefined : await proofOf(list)
    if (proof) proofs.set(list.key, proof)
  }
  return onPaper(plan, proofs)
}
