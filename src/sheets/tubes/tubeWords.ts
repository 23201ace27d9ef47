import type { GradedGroup, GradedRow, StationRun } from '../../evaluate/water/gradedRow'
import { feet, type Units } from '../../units/length'
import type { Writer } from '../../units/writer'

/** `3`, `1 to 6`. */
export const runWords = ({ from, to }: StationRun): string => (from === to ? `${from}` : `${from} to ${to}`)

/** Ends of a bundle are wasted. Common practice, no source. */
const BUNDLE_SPARE = 1.03

/** Tube comes off a coil, and nobody buys it by the inch. */
const COIL_STEP_MM: Readonly<Record<Units, number>> = { 'feet-inches': feet(1), metric: 100 }

export const SPARE_WORDS = 'with 3 % spare'

/** What is taken off a coil for so much tube, mm: with a spare, in whole steps. */
export const coilOf = (mm: number, units: Units): number =>
  Math.ceil((mm * BUNDLE_SPARE) / COIL_STEP_MM[units]) * COIL_STEP_MM[units]

/** One bundle in the columns of the tube card. */
export const groupRow = (
  { label, lengthMm, stations, fromEntry, tubes }: GradedGroup,
  { onTape, length }: Writer,
  units: Units,
): string[] => [
  label,
  onTape(lengthMm),
  stations.map(runWords).join(', '),
  runWords(fromEntry),
  String(tubes),
  length(coilOf(tubes * lengthMm, units)),
]

/** What cutting by station does, and how far the lengths are apart that would make all towers the same. */
export const cutWords = ({ before, after, groups, exactMm }: GradedRow, { share, onTape }: Writer): string =>
  [
    `All tubes alike: spread ${share(before.figures.spread)}, ${before.state}.`,
    `Cut in ${groups.length} lengths: spread ${share(after.figures.spread)}, ${after.state}, with no fitting more.`,
    `Exact lengths run from ${onTape(Math.max(...exactMm))} to ${onTape(Math.min(...exactMm))}.`,
  ].join(' ')
