import type { Frame } from '../../../../evaluate/loads/frame'
import { memberName } from '../../../../model/memberNames'
import { likeMembers } from '../../../../sheets/assembly/memberTable'
import type { Writer } from '../../../../units/writer'
import { countedIn, type Stretch } from './stretch'

/** What is drawn: `rack 2 of 3`, `the whole row, 3 racks`. */
export const stretchWords = ({ rack: { racks } }: Frame, { rack }: Stretch): string => {
  if (racks === 1) return 'the rack'
  return rack === undefined ? `the whole row, ${racks} racks` : `rack ${rack} of ${racks}`
}

/** Which way the gutters fall on the drawing along the row. */
export const fallWords = (frame: Frame): string => {
  const [gutter] = frame.sticks.get('GT') ?? []
  if (!gutter) return ''
  const { from, to } = gutter
  return from.z > to.z === from.u < to.u ? 'Gutters fall to the right.' : 'Gutters fall to the left.'
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
