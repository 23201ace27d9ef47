import type { Paint } from '../../store/planner'
import { usePlanner, usePlannerState } from '../../store/react'

const paints: readonly { readonly paint: Paint; readonly word: string; readonly does: string }[] = [
  { paint: 'plain', word: 'Plain', does: 'The plan as it is' },
  { paint: 'flow', word: 'Flow', does: 'Every tower painted by its flow' },
  { paint: 'velocity', word: 'Velocity', does: 'Mains and laterals painted by the velocity of the water' },
  { paint: 'shims', word: 'Shims', does: 'Feet and gutter bearers painted by the shims under them' },
  { paint: 'strength', word: 'Strength', does: 'Rails painted by how much of their limit they use' },
]

/** What the plan is painted by, one of five. */
export function PaintSwitch() {
  const planner = usePlanner()
  const shown = usePlannerState((state) => state.paint)
  const take = (paint: Paint, does: string) => {
    planner.set({ paint })
    planner.say(does)
  }
  return (
    <fieldset className="water-switch">
      <legend className="only-heard">Painted on the plan</legend>
      {paints.map(({ paint, word, does }) => (
        <label key={paint} title={does}>
          <input
            type="radio"
            name="water-paint"
            checked={shown === paint}
            onChange={() => take(paint, does)}
          />
          {word}
        </label>
      ))}
    </fieldset>
  )
}
