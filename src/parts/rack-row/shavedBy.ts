import type { RackRow } from './schema'

type Fields = readonly (keyof RackRow)[]

/** A cross-piece, a tie and a brace are cut at one stop, which the rails set. */
const crossways: Fields = ['railSpacingMm']
const risers: Fields = ['riserMm', 'topMarginMm', 'leastShimMm', 'hookMm', 'towerMm']
const rails: Fields = ['railEndMm', 'railGapMm', 'overlapMm', 'pastRiserMm', 'lapMm', 'rackLengthMm']
const joiners: Fields = ['insertionMm', 'railGapMm']

/**
 * By the mark of a member, the fields that make it shorter, in the order in which a builder gives them up: what only sticks out or
 * is to spare, then what moves a line of towers or a rail, then what makes another row. Splice plates are what the splice asks.
 */
export const shavedBy: Readonly<Record<string, Fields>> = {
  GB: ['bearerEndMm', 'lineSpacingMm', 'railSpacingMm'],
  HB: ['barEndMm', 'lineSpacingMm', 'railSpacingMm'],
  BX: crossways,
  TT: crossways,
  SB: crossways,
  XB: crossways,
  BR: ['railEndMm', 'railSpacingMm', 'rackLengthMm'],
  'RS-p': risers,
  'RS-s': risers,
  'RS-d': risers,
  RL: rails,
  'RL-b': rails,
  SV: joiners,
  DW: joiners,
  GT: ['rackLengthMm'],
}
