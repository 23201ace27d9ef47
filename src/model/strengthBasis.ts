import type { ScreenId } from './strength'

/** What a screen rests on, as every view and sheet says it. */
export interface Basis {
  readonly title: string
  /** In words, then in symbols. */
  readonly formula: string
  readonly limit: string
  /** Publication, edition, section or table; or that it is from memory, an assumption, common practice. */
  readonly source: string
  readonly assumptions: readonly string[]
}

export type BasisId = ScreenId | 'stance'

/** Every screen's; empty until the screens themselves are there. */
export const strengthBasis: Readonly<Partial<Record<BasisId, Basis>>> = {}
