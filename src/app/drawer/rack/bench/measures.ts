import { type Frame, sticksOf } from '../../../../evaluate/loads/frame'
import type { Member } from '../../../../sheets/assembly/members'
import type { Laid } from '../../../../sheets/assembly/shapes'
import { measured, together, type Worded } from '../../../../sheets/paperDimensions'
import { textWidth } from '../../../../drawing/lettering'
import type { Writer } from '../../../../units/writer'
import { LETTER_MM } from './glass'
import { isRiser } from './stretch'

/** How far under the floor each line of dimensions stands, mm of glass. */
const UNDER = { first: 4, second: 8.2 }
/** How far over the highest member, mm of glass. */
const OVER_MM = 2.4
/** How far out of the end view its heights stand, mm of glass. */
const ASIDE_MM = 1.6

const distinct = (places: readonly number[]): readonly number[] =>
  [...new Set(places.map((mm) => Math.round(mm * 10) / 10))].toSorted((a, b) => a - b)

const marked = (members: readonly Member[], ...marks: readonly string[]): readonly Member[] =>
  members.filter(({ stick }) => marks.includes(stick.mark))

/** A dimension with its name where there is room for it, else with its number alone. */
const named = (fromX: number, toX: number, y: number, name: string, tape: string): Worded => {
  const text = `${name} ${tape}`
  const fits = textWidth(text, LETTER_MM) < 0.92 * Math.abs(toX - fromX)
  return measured({ x: fromX, y }, { x: toX, y }, 0, fits ? text : tape)
}

/** Pieces that lie end to end along the row, one line behind the other left out. */
const onOneSide = (members: readonly Member[]): readonly Member[] => {
  const most = Math.max(...members.map(({ from }) => from.v))
  return members
    .filter(({ from }) => Math.abs(from.v - most) < 30)
    .toSorted((a, b) => Math.min(a.from.u, a.to.u) - Math.min(b.from.u, b.to.u))
}

/** Bars lie evenly within this, mm: the tick of a tape. */
const EVEN_MM = 1

/** From bar to bar, or over as many even ones as give its number room: `3 at 14-1/4"`. */
const barsDimension = (
  bars: readonly number[],
  x: (u: number) => number,
  y: number,
  write: Writer,
): Worded => {
  const [first, second] = bars
  if (first === undefined || second === undefined) return together([])
  const tape = write.onTape(second - first)
  const isEven = (count: number) =>
    Math.abs((bars[count] ?? Infinity) - first - count * (second - first)) < EVEN_MM * count
  const to = (count: number) => first + count * (second - first)
  const hasRoom = (count: number) =>
    textWidth(`${count} at ${tape}`, LETTER_MM) < 0.92 * (x(to(count)) - x(first))
  const isNarrow = textWidth(tape, LETTER_MM) >= 0.92 * (x(second) - x(first))
  const count = isNarrow ? [2, 3, 4].find((each) => isEven(each) && hasRoom(each)) : undefined
  return count === undefined
    ? named(x(first), x(second), y, 'bars', tape)
    : measured({ x: x(first), y }, { x: x(to(count)), y }, 0, `${count} at ${tape}`)
}

/** From riser to riser, each rail or, where the rack is on its own, its runner; and from bar to bar. */
export const alongDimensions = (
  members: readonly Member[],
  topMm: number,
  laid: Laid,
  write: Writer,
): Worded => {
  const x = (u: number) => laid.x + u * laid.scale
  const risers = distinct(members.filter(isRiser).map(({ from }) => from.u))
  const bars = distinct(marked(members, 'HB').map(({ from }) => from.u))
  const rails = onOneSide(marked(members, 'RL', 'RL-b'))
  return together([
    ...risers.slice(1).map((to, index) => {
      const from = risers[index] ?? to
      return named(x(from), x(to), laid.y - UNDER.first, 'risers', write.onTape(to - from))
    }),
    ...rails.map(({ from, to, stick }) =>
      named(x(from.u), x(to.u), laid.y - UNDER.second, 'rail', write.onTape(stick.lengthMm)),
    ),
    barsDimension(bars, x, laid.y + topMm * laid.scale + OVER_MM, write),
  ])
}

const upright = (x: number, fromZ: number, toZ: number, laid: Laid, text: string): Worded =>
  measured({ x, y: laid.y + fromZ * laid.scale }, { x, y: laid.y + toZ * laid.scale }, 0, text)

/** From line to line, rail to rail, end to end of a bar; how long a tower is. */
export const acrossDimensions = (
  frame: Frame,
  members: readonly Member[],
  extent: { readonly fromV: number; readonly topMm: number },
  laid: Laid,
  write: Writer,
): Worded => {
  const x = (v: number) => laid.x + v * laid.scale
  const rails = distinct(sticksOf(frame, 'RL', 'RL-b').map(({ from }) => from.v))
  const lines = distinct(frame.towers.map(({ v }) => v))
  const [bar] = marked(members, 'HB')
  const [tower] = frame.towers
  const [left, right] = [rails[0], rails.at(-1)]
  const [one, two] = lines
  const aside = x(extent.fromV) - ASIDE_MM
  return together([
    ...(left !== undefined && right !== undefined && right > left
      ? [named(x(left), x(right), laid.y - UNDER.first, 'rails', write.onTape(right - left))]
      : []),
    ...(bar
      ? [
          named(
            x(Math.min(bar.from.v, bar.to.v)),
            x(Math.max(bar.from.v, bar.to.v)),
            laid.y - UNDER.second,
            'bar',
            write.onTape(bar.stick.lengthMm),
          ),
        ]
      : []),
    ...(one !== undefined && two !== undefined
      ? [
          named(
            x(one),
            x(two),
            laid.y + extent.topMm * laid.scale + OVER_MM,
            'lines',
            write.onTape(two - one),
          ),
        ]
      : []),
    ...(tower
      ? [upright(aside, frame.rack.tipMm, tower.z, laid, `tower ${write.onTape(tower.z - frame.rack.tipMm)}`)]
      : []),
  ])
}
