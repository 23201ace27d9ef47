import { type PaperName, papers } from '../../../drawing/paper'
import { setPapers } from '../../../layout/bayEdits'
import type { Papers } from '../../../layout/schema'
import type { Sheet } from '../../../sheets/sheet'
import { usePlanner } from '../../../store/react'
import type { Units } from '../../../units/length'
import { optionsIn, type PaperSet } from '../../../sheets/paperSet'

type Choice = Papers['choices'][number]

/** The choices with one sheet's changed. */
const withChoice = (choices: readonly Choice[], sheet: Sheet, change: Omit<Choice, 'sheet'>): Choice[] => {
  const before = choices.find((choice) => choice.sheet === sheet.id) ?? { sheet: sheet.id }
  return [...choices.filter((choice) => choice !== before), { ...before, ...change }]
}

interface SheetChoicesProps {
  readonly sheet: Sheet
  readonly set: PaperSet
}

/** Units and paper of one sheet, which are kept with the bay: who saws may read inches, who owns millimetres. */
export function SheetChoices({ sheet, set }: SheetChoicesProps) {
  const planner = usePlanner()
  const { units, paper } = optionsIn(sheet, set)
  const choose = (change: Omit<Choice, 'sheet'>) =>
    planner.commit(`Change the ${sheet.title.toLowerCase()}`, (layout) => {
      const edited = setPapers(layout, { choices: withChoice(layout.papers.choices, sheet, change) })
      return edited.ok ? edited.layout : layout
    })
  return (
    <>
      <label className="box-choice">
        Units
        <select
          value={units}
          onChange={(event) => choose({ units: event.target.value as Units /* values below */ })}
        >
          <option value="feet-inches">Feet and inches</option>
          <option value="metric">Metric</option>
        </select>
      </label>
      <label className="box-choice">
        Paper
        <select
          value={paper}
          onChange={(event) => choose({ paper: event.target.value as PaperName /* values below */ })}
        >
          {Object.values(papers).map(({ name, title }) => (
            <option key={name} value={name}>
              {title}
            </option>
          ))}
        </select>
      </label>
    </>
  )
}
