import { type FormEvent, useState } from 'react'
import { type PaperName, papers, planPapers } from '../drawing/paper'
import { floorPage } from '../sheets/floor/floorSheet'
import type { SheetOptions } from '../sheets/sheet'
import type { Units } from '../units/length'
import { issueNumber } from '../layout/issues'
import { usePlanner } from '../store/react'
import { Dialog, FormEnd } from './Dialog'
import { download, fileName } from './files/download'
import { exportPng } from './files/exportPng'
import { namesOf } from './paperNames'

interface ExportPlanProps {
  readonly onClose: () => void
}

type Way = SheetOptions['orientation']

/** Enough that a 2 mm letter is crisp on paper. */
const RESOLUTIONS = [200, 300]

/** The floor sheet as a picture for the crew, at a true scale on a named paper. */
export function ExportPlan({ onClose }: ExportPlanProps) {
  const planner = usePlanner()
  const { layout, units: shown } = planner.store.getState()
  const [paper, setPaper] = useState<PaperName>(shown === 'metric' ? 'A3' : 'tabloid')
  const [orientation, setOrientation] = useState<Way>('auto')
  const [units, setUnits] = useState<Units>(shown)
  const [dpi, setDpi] = useState(200)
  const [isWorking, setIsWorking] = useState(false)
  const [refused, setRefused] = useState('')

  const make = async (event: FormEvent) => {
    event.preventDefault()
    setIsWorking(true)
    const { evaluation } = planner.store.getState()
    const page = floorPage(evaluation, {
      paper,
      orientation,
      scale: 'fit',
      units,
      ...namesOf(layout),
    })
    const made = await exportPng(page, dpi)
    setIsWorking(false)
    if (!made.ok) return setRefused(made.sentence)
    download(made.blob, fileName(`${layout.title} floor sheet issue ${issueNumber(layout)}`, '.png'))
    return onClose()
  }

  return (
    <Dialog title="Plan for the crew" onClose={onClose}>
      <form onSubmit={(event) => void make(event)}>
        <label>
          Paper
          <select
            value={paper}
            onChange={(event) => setPaper(event.target.value as PaperName /* values below */)}
          >
            {planPapers.map((name) => (
              <option key={name} value={name}>
                {papers[name].title}
              </option>
            ))}
          </select>
        </label>
        <label>
          Way round
          <select
            value={orientation}
            onChange={(event) => setOrientation(event.target.value as Way /* values below */)}
          >
            <option value="auto">Whichever is larger</option>
            <option value="portrait">Upright</option>
            <option value="landscape">On its side</option>
          </select>
        </label>
        <label>
          Units on the sheet
          <select
            value={units}
            onChange={(event) => setUnits(event.target.value as Units /* values below */)}
          >
            <option value="feet-inches">Feet and inches</option>
            <option value="metric">Metric</option>
          </select>
        </label>
        <label>
          Dots an inch
          <select value={dpi} onChange={(event) => setDpi(Number(event.target.value))}>
            {RESOLUTIONS.map((dots) => (
              <option key={dots}>{dots}</option>
            ))}
          </select>
        </label>
        <p>
          The scale is the largest standard one that fits the paper; it stands in the title block with a bar
          to measure.
        </p>
        <FormEnd
          refused={refused}
          does={isWorking ? 'Drawing…' : 'Save the picture'}
          isWorking={isWorking}
          onClose={onClose}
        />
      </form>
    </Dialog>
  )
}
