/** A tube or a bar as a beam. */
export interface Bending {
  readonly eiNmm2: number
  readonly sectionMm3: number
}

export interface Longest {
  readonly mm: number
  /** What stops it there. */
  readonly by: 'stress' | 'sag'
}

/**
 * The longest simple span under an even load that stays within a stress and within a sag of its length over a number:
 * w L² / 8 = S σ, and 5 w L⁴ / 384 EI = L / n. AISC Manual, Table 3-23, case 1, from memory. Infinity under no load.
 */
export const longestSpan = (
  { eiNmm2, sectionMm3 }: Bending,
  loadNPerMm: number,
  allowed: { readonly stressMpa: number; readonly sagOver: number },
): Longest => {
  const byStress = Math.sqrt((8 * sectionMm3 * allowed.stressMpa) / loadNPerMm)
  const bySag = Math.cbrt((384 * eiNmm2) / (5 * loadNPerMm * allowed.sagOver))
  return byStress <= bySag ? { mm: byStress, by: 'stress' } : { mm: bySag, by: 'sag' }
}
