import type { Paint } from '../../store/planner'
import { usePlanner, usePlannerState } from '../../store/react'

const paints: readonly { readonly paint: Paint; readonly word: string; readonly does: string }[] = [
  { paint: 'plain', word: 'Plain', does: 'The plan without the water' },
  { paint: 'flow', word: 'Flow', does: 'Every tower painted by its flow' },
  { paint: 'velocity', word: 'Velocity', does: 'Mains and laterals painted by the velocity of the water' },
]

/** What the plan shows of the water, one of three. */
export function PaintSwitch() {
  const planner = usePlanner()
  const shown = usePlannerState((state) => state.paint)
  const take = (paint: Paint, does: string) => {
    planner.set({ paint })
    planner.say(does)
  }
  return (
    <fieldset className="water-switch">
      <legend className="only-heard">Water on the plan</legend>
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
