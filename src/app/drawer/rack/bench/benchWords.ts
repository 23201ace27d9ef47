import type { Frame } from '../../../../evaluate/loads/frame'
import { memberName } from '../../../../model/memberNames'
import { likeMembers } from '../../../../sheets/assembly/memberTable'
import type { Writer } from '../../../../units/writer'
import { countedIn, type Stretch } from './stretch'

/** What is drawn: `rack 2 of 3`, `the whole row, 3 racks`. */
const stretchWords = ({ rack: { racks } }: Frame, { rack }: Stretch): string => {
  if (racks === 1) return 'the rack'
  return rack === undefined ? `the whole row, ${racks} racks` : `rack ${rack} of ${racks}`
}

const fallsRight = (frame: Frame): boolean | undefined => {
  const [gutter] = frame.sticks.get('GT') ?? []
  return gutter && gutter.from.z > gutter.to.z === gutter.from.u < gutter.to.u
}

/** Which way the gutters fall on the drawing along the row. */
export const fallSign = (frame: Frame): string => {
  const falls = fallsRight(frame)
  if (falls === undefined) return ''
  return falls ? 'gutters fall →' : '← gutters fall'
}

/** All that is drawn in a sentence, for who hears it. */
export const drawingSentence = (
  name: string,
  frame: Frame,
  stretch: Stretch,
  view: 'along' | 'across',
  { onTape }: Writer,
): string => {
  const from = view === 'along' ? 'from its right side, its start at the left' : 'from its start'
  const members = likeMembers(countedIn(frame, stretch)).map(
    ({ count, first: { stick } }) => `${count} ${memberName(stick.mark)} ${onTape(stick.lengthMm)}`,
  )
  return `${name}, ${stretchWords(frame, stretch)}, ${from}, to scale. Members: ${members.join('; ')}.`
}
