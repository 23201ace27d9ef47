/** Station from the pit wall, invert, floor, and depth to dig with 2 in of bed, to the eighth; inches. */
export type Peg = readonly [station: number, invert: number, ground: number, dig: number]

/** Peg table of drain N at "Kestrel Bend Farm, House 2": worked example of the trade notes, hand arithmetic. */
export const PEGS_N: readonly Peg[] = [
  [268, -8.29, -1.11, 9.25],
  [250, -8.48, -1.16, 9.375],
  [232, -8.67, -1.21, 9.5],
  [214, -8.85, -1.26, 9.625],
  [166, -9.35, -1.4, 10],
  [148, -9.54, -1.45, 10.125],
  [130, -9.73, -1.5, 10.25],
  [112, -9.92, -1.55, 10.5],
  [64, -10.42, -1.69, 10.75],
  [46, -10.6, -1.74, 11],
  [28, -10.79, -1.79, 11.125],
  [10, -10.98, -1.84, 11.25],
]
