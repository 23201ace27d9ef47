import { conduits } from '../../catalogue/conduit'
import { MM_PER_M } from '../../units/length'
import type { Member } from './members'

/**
 * Assumed of framing lumber, kg a cubic metre: between dry spruce and dry southern pine. Wet or treated boards weigh up to half as
 * much again. From memory, after the USDA Wood Handbook (2010), table 5-3.
 */
const WOOD_KG_M3 = 550

const kgPerMOf: ReadonlyMap<string, number> = new Map(conduits.map(({ key, kgPerM }) => [key, kgPerM]))

/** What one member weighs, kg: conduit by its table, lumber by its size. */
export const memberKg = ({ stick }: Pick<Member, 'stick'>): number => {
  const lengthM = stick.lengthMm / MM_PER_M
  const kgPerM =
    kgPerMOf.get(stick.stock) ?? (stick.widthMm / MM_PER_M) * (stick.heightMm / MM_PER_M) * WOOD_KG_M3
  return lengthM * kgPerM
}

export const massOf = (members: readonly Pick<Member, 'stick'>[]): number =>
  members.reduce((sum, member) => sum + memberKg(member), 0)
