import type { RowStrength, StanceState, StrengthState } from '../model/strength'
import type { Writer } from '../units/writer'

/** How a row carries and how it stands: a state word each, with what is said of it. */
export interface RowStrengthWords {
  readonly carries: { readonly state: StrengthState; readonly words: string }
  readonly stands: { readonly state: StanceState; readonly words: string }
}

/** Within, `77.0 %`, and Stands, `anchored`; a member that is refused has no share, and only a held row says by what. */
export const rowStrengthWords = (
  { state, screens, stance }: Pick<RowStrength, 'state' | 'screens' | 'stance'>,
  { share }: Pick<Writer, 'share'>,
): RowStrengthWords => {
  const [governs] = screens
  const used = governs && (Number.isFinite(governs.used) ? share(governs.used) : 'refused')
  return {
    carries: { state, words: used ?? '' },
    stands: { state: stance.state, words: stance.heldBy ?? '' },
  }
}
