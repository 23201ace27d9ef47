import { mayGain } from '../evaluate/cutting/mayGain'
import type { Judged } from '../evaluate/evaluation'
import { withProof } from '../evaluate/withProof'
import type { CutList } from '../model/cutList'
import { firstPlan } from '../solvers/cutting/firstPlan'
import { prove } from '../solvers/cutting/prove/prove'

const isOwed = (list: CutList): boolean =>
  list.boards.length > 0 && (list.standing.kind !== 'proven' || mayGain(list))

const provedList = async (list: CutList): Promise<CutList> =>
  isOwed(list) ? withProof(list, await prove(list.problem, firstPlan(list.problem))) : list

/**
 * The plan with each of its cut lists proven, or as near to it as the own search comes within its work, which is counted in
 * steps: the same plan always gives the same boards. Lists that the page searches are searched, and no others.
 */
export const provedPlan = async (plan: Judged): Promise<Judged> => {
  const cuts: CutList[] = []
  for (const list of plan.cuts) cuts.push(await provedList(list))
  return { ...plan, cuts }
}
