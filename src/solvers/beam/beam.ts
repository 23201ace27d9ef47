/**
 * A straight beam of piecewise stiffness on any supports, and what lies on it. Places are mm along it from any zero, forces
 * N and downward, moments N·mm and positive where the beam sags (tension below), sag mm and positive downward.
 */
export interface Beam {
  readonly fromMm: number
  readonly toMm: number
  /** From `fromMm` on, ascending; the last reaches `toMm`. */
  readonly sections: readonly BeamSection[]
  /** Ascending. */
  readonly supports: readonly BeamSupport[]
  /** Where the beam carries no moment, such as a slip joint. Ascending, strictly within the beam. */
  readonly hinges: readonly number[]
}

export interface BeamSection {
  readonly toMm: number
  /** Young's modulus times second moment of area, N·mm². */
  readonly eiNmm2: number
}

export interface BeamSupport {
  readonly atMm: number
  /** `both`: a hole holds it down as well as up. `up`: it lies in a notch and can lift off. */
  readonly holds: 'both' | 'up'
  /** It keeps the beam level there as well, as a wall or a foot in concrete does. */
  readonly isClamped?: true
}

export interface PointLoad {
  readonly atMm: number
  readonly downN: number
}

export interface LineLoad {
  readonly fromMm: number
  readonly toMm: number
  readonly downNPerMm: number
}

export interface BeamLoad {
  readonly points: readonly PointLoad[]
  readonly lines: readonly LineLoad[]
}
