import { STATURE_SOURCE, stature, STEP_FROM_MM, STEP_MM } from '../../../catalogue/stature'
import type { RunTravel } from '../../../checks/runTravel'
import { assumed } from '../../../evaluate/handling/assumed'
import type { Easing } from '../../../evaluate/handling/easing'
import type { LineLift, RowHandling } from '../../../evaluate/handling/handling'
import type { Lifted } from '../../../evaluate/handling/lifted'
import { inPounds } from '../../../solvers/lifting'
import { writeDecimal } from '../../../units/writeDecimal'
import type { Writer } from '../../../units/writer'

/** The lifting index to a tenth; a dash where nothing is recommended. */
export const indexWords = ({ index }: Pick<Lifted, 'index'>): string =>
  index < Infinity ? writeDecimal(index, 1) : '–'

export const sideWords = { left: 'Left', right: 'Right' } as const

/** What the worst lift of a row comes to, in a sentence. */
export const verdictOf = ({ worst, isShut, loadKg }: RowHandling, { mass, onTape }: Writer): string => {
  if (isShut || !worst) return 'Nobody can stand along this row, so nothing is hung on it.'
  const where = `Line ${worst.line}, from the ${worst.side}`
  const far = onTape(worst.lift.reachMm)
  if (worst.word === 'Out of reach')
    return `${where}: hands are ${far} from the ankles and ${onTape(worst.lift.handsMm)} up, where no weight is recommended.`
  const says = `${where}: ${mass(loadKg)} is ${indexWords(worst)} times what is recommended at ${far} from the ankles`
  if (worst.word === 'Under limit') return `${says}. No promise that it is safe.`
  return `${says}: raised risk for ${worst.word === 'Far over' ? 'many' : 'some'} workers.`
}

const EASES: Readonly<Record<Easing['key'], string>> = {
  'other-side': 'An aisle on the other side',
  step: 'From a step platform',
  grip: 'A strap or handles: a good grip',
  straight: 'Straight on, its neighbours taken down',
  near: 'Held close, as if it hung at the aisle',
}

/** What would ease the worst lift, with what its index would then be. */
export const easingRows = (easings: readonly Easing[]) =>
  easings.map(({ key, lifted }) => ({ key, words: EASES[key], lifted }))

/** The equation's six multipliers in the order in which it is printed, with what went into each. */
export const multiplierRows = (
  { lift, multipliers, limitKg, loadKg }: Lifted,
  writer: Writer,
): readonly (readonly [name: string, input: string, multiplier: string])[] => {
  const { onTape, mass } = writer
  const two = (value: number) => writeDecimal(value, 2)
  return [
    ['Most that is ever recommended', '', mass(inPounds.loadKg)],
    ['Reach, ankles to hands', onTape(lift.reachMm), `x ${two(multipliers.reach)}`],
    ['Hands over the floor', onTape(lift.handsMm), `x ${two(multipliers.height)}`],
    ['Hands go up or down', onTape(lift.travelMm), `x ${two(multipliers.travel)}`],
    ['Turn of the body', `${lift.twistDeg}°`, `x ${two(multipliers.twist)}`],
    ['Lifts a minute, an hour at most', writeDecimal(lift.liftsAMin, 0, 1), `x ${two(multipliers.pace)}`],
    ['Grip', lift.grip, `x ${two(multipliers.grip)}`],
    ['Recommended weight limit', '', `= ${mass(limitKg)}`],
    [
      'Lifting index',
      `${mass(loadKg)} over that`,
      `= ${indexWords({ index: limitKg > 0 ? loadKg / limitKg : Infinity })}`,
    ],
  ]
}

export const ARM_WORDS: Readonly<Record<LineLift['arm'], string>> = {
  'every arm': 'a small woman’s arm',
  'long arms': 'a long arm alone',
  'no arm': 'no straight arm',
}

/** Steps and eyes, in whole sentences. */
export const heightSentences = (
  { barTopMm, isStepNeeded, isOverSmallReach, ends }: RowHandling,
  { onTape }: Writer,
): readonly string[] => {
  const step = isStepNeeded
    ? [
        `Bars are ${onTape(barTopMm)} over the floor where it is lowest, and over ${onTape(STEP_FROM_MM)} one works from a step platform.${isOverSmallReach ? ` A small woman grips ${onTape(stature.gripUp.woman5Mm)} high.` : ''}`,
      ]
    : [`Bars are ${onTape(barTopMm)} over the floor where it is lowest: no step is needed.`]
  const eyes = ends
    .filter(({ isAtEyes }) => isAtEyes)
    .map(
      ({ what, lowMm, highMm }) =>
        `Ends of ${what} are ${lowMm === highMm ? onTape(lowMm) : `${onTape(lowMm)} to ${onTape(highMm)}`} up, at the height of eyes: cap and mark them.`,
    )
  return [...step, ...eyes]
}

/** What the numbers stand on. */
export const assumptionsOf = ({ onTape }: Writer): readonly string[] => [
  `Leaves are pushed aside; ankles stand off what sticks out most, and no tower is held nearer than ${onTape(assumed.nearestMm)}.`,
  `Hands have the tower ${onTape(assumed.underBarMm)} under the top of its bar while it is hooked on, and had it ${onTape(assumed.cartMm)} up at the cart.`,
  `Past a line that hangs the body turns by ${assumed.pastLineDeg}°. A step platform is ${onTape(STEP_MM)} high.`,
  'Two hands, a firm dry floor, an hour at most: wet floors are outside the equation.',
  `Equation: NIOSH Publication 94-110, 1994, its form in pounds and inches. Reaches and heights: ${STATURE_SOURCE}. The rest is assumed.`,
]

const RUNS: Readonly<Record<RunTravel['what'], readonly [title: string, advice: string]>> = {
  gutter: ['Gutters', 'Fix each at one point, slots elsewhere; clamped at both ends it bows and ponds.'],
  lateral: ['Laterals', 'Tie it fast where water comes in, loosely elsewhere.'],
  rail: ['Rails', 'One stop at the first riser; joints slide.'],
  main: ['', 'Lay it in a snake, clips loose.'],
  drain: ['', 'Buried it moves a fraction of this; cover it before noon.'],
}

interface TravelRow {
  readonly key: string
  readonly title: string
  readonly of: string
  readonly run: string
  readonly travel: string
  readonly room: string
  readonly advice: string
  readonly isOver: boolean
}

/** Runs of a row and the pipes of the bay, with what each moves. */
export const travelRows = (
  travels: readonly RunTravel[],
  name: (part: string) => string,
  { length, onTape }: Writer,
): readonly TravelRow[] =>
  travels.map(({ part, what, of, lengthMm, travelMm, at }, index) => {
    const [title, advice] = RUNS[what]
    return {
      key: `${part} ${what} ${index}`,
      title: what === 'main' || what === 'drain' ? name(part) : title,
      of: of.title,
      run: length(lengthMm),
      travel: onTape(travelMm),
      room: at
        ? `${onTape(at.travelMm)} of ${onTape(at.roomMm)} at ${what === 'gutter' ? 'a joiner' : 'a tube'}`
        : 'free',
      advice,
      isOver: at !== undefined && at.travelMm > at.roomMm,
    }
  })
