import { psi } from '../../units/force'
import { inches } from '../../units/length'

/** Strength of wood under a dowel that presses along the grain, MPa, by specific gravity. Source: NDS Table 12.3.3, F_e = 11,200 G psi. */
export const bearingAlongMpa = (gravity: number): number => psi(11_200 * gravity)

/** Divides what the wood itself bears along the grain. Source: NDS Table 12.3.1B, from memory. */
const REDUCTION = 4

/**
 * Force that a dowel through the wood may press along the grain with, N, where the wood yields and not the dowel (mode
 * I). The rules end at dowels of 1 in, and mean solid ones. Source: NDS Table 12.3.1A, from memory.
 */
export const dowelN = (diameterMm: number, throughMm: number, strengthMpa: number): number =>
  (diameterMm * throughMm * strengthMpa) / REDUCTION

/**
 * Distances from a dowel's centre in diameters: to an edge alongside the grain; to the end that the load presses away from, for
 * all of its value and at the very least, where half is left. Sources: NDS Tables 12.5.1C and 12.5.1A, from memory.
 */
export const DOWEL_CLEAR = { edge: 1.5, endFull: 4, endLeast: 2 } as const

/** The largest dowel that the rules are of, mm. */
export const DOWEL_MOST_MM = inches(1)

/**
 * What an end nearer than wanted leaves of a dowel's value. Nearer than the least it is not permitted, whatever it leaves.
 * Source: NDS 12.5.1.2, from memory.
 */
export const endFactor = (endMm: number, diameterMm: number): number =>
  Math.min(1, endMm / (DOWEL_CLEAR.endFull * diameterMm))
