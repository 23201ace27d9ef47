import { inches } from '../units/length'

/** Heights and reaches of four people, mm: of women every twentieth and the middle one, of men the middle one and nineteen of twenty. */
interface Stature {
  readonly key: 'grip-up' | 'grip-ahead' | 'eyes' | 'shoulder' | 'elbow'
  readonly title: string
  readonly woman5Mm: number
  readonly woman50Mm: number
  readonly man50Mm: number
  readonly man95Mm: number
}

export const STATURE_SOURCE = 'Pheasant, Bodyspace, 1996'

const row = (
  key: Stature['key'],
  title: string,
  [woman5, woman50, man50, man95]: readonly [number, number, number, number],
): Stature => ({
  key,
  title,
  woman5Mm: inches(woman5),
  woman50Mm: inches(woman50),
  man50Mm: inches(man50),
  man95Mm: inches(man95),
})

/** Standing, without shoes. Pheasant, Bodyspace, 1996. */
export const stature = {
  gripUp: row('grip-up', 'Grip reach upward', [71.1, 75.8, 81.9, 87]),
  gripAhead: row('grip-ahead', 'Grip reach ahead', [25.8, 28, 30.9, 33.3]),
  eyes: row('eyes', 'Eyes', [55.9, 60, 67.3, 71.9]),
  shoulder: row('shoulder', 'Shoulder', [48.2, 52.2, 56.7, 61]),
  elbow: row('elbow', 'Elbow', [37.2, 40.2, 43.5, 46.9]),
} as const satisfies Record<string, Stature>

/** Above this a grown person works from a step. Common practice, no source. */
export const STEP_FROM_MM = inches(66)

/** What a step platform lifts a person by, mm. Common practice, no source. */
export const STEP_MM = inches(10)
