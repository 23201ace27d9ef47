import type { CutList } from '../../model/cutList'

/**
 * Whether a search may find better boards for a list whose cost is proven. Of one length of stock the cheapest plan has the fewest
 * boards; of several it need not, and a proof tells that too. Boards cut in three ways or more may do in fewer.
 */
export const mayGain = ({ problem, boards }: CutList): boolean =>
  problem.stocks.length > 1 || boards.length > 2
