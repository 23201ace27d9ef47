import { stockOf } from '../../../../catalogue/stock'
import { memberTitle } from '../../../../model/memberNames'
import type { StrengthState } from '../../../../model/strength'
import { likeMembers } from '../../../../sheets/assembly/memberTable'
import type { Member } from '../../../../sheets/assembly/members'
import { StateMark } from '../../../../sidebar/StateMark'
import type { Writer } from '../../../../units/writer'
import { strengthRank } from '../shownRack'

interface MemberListProps {
  readonly members: readonly Member[]
  readonly states: ReadonlyMap<string, StrengthState>
  readonly words: Writer
  readonly lit: string | undefined
  readonly onMark: (mark: string) => void
}

/** What is drawn, in words: every member with its count and cut length. A mark that is pressed lights up on the drawing. */
export function MemberList({ members, states, words, lit, onMark }: MemberListProps) {
  return (
    <table className="bench-members">
      <thead>
        <tr>
          <th scope="col">Mark</th>
          <th scope="col">Member</th>
          <th scope="col">Pieces</th>
          <th scope="col">Length</th>
        </tr>
      </thead>
      <tbody>
        {likeMembers(members).map(({ key, first: { stick }, count }) => {
          const state = states.get(stick.mark)
          return (
            <tr key={key} className={stick.mark === lit ? 'bench-lit-row' : undefined}>
              <th scope="row">
                <button
                  aria-pressed={stick.mark === lit}
                  aria-label={`Light up ${stick.mark} on the drawing`}
                  onClick={() => onMark(stick.mark)}
                >
                  {stick.mark}
                </button>
              </th>
              <td>
                {memberTitle(stick.mark)} <i>{stockOf(stick.stock).title}</i>
                {state && state !== 'Within' && <StateMark word={state} rank={strengthRank(state)} />}
              </td>
              <td>{count}</td>
              <td className="unbroken">{words.onTape(stick.lengthMm)}</td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
