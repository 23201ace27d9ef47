import { Download, ExternalLink } from 'lucide-react'
import { useId, useState } from 'react'
import { sheets } from '../../../sheets'
import { download, fileName } from '../../files/download'
import { useAnswer } from '../useAnswer'
import { type PaperSet } from '../../../sheets/paperSet'
import './papers.css'
import { phoneSteps } from './phoneSteps'
import { useIssuedProven, usePaperPlan } from './usePaperPlan'

const readers = [...new Set(sheets.map(({ reader }) => reader))]
const ALL = 'all'

const HTML = 'text/html;charset=utf-8'

const save = (html: string, { plan, issue }: PaperSet, reader: string): void => {
  const whose = reader === ALL ? 'papers' : reader
  download(
    new Blob([html], { type: HTML }),
    fileName(`${plan.now.layout.title} ${whose} ${/^\d/.test(issue) ? 'issue ' : ''}${issue}`, '.html'),
  )
}

/** The browser keeps the page for as long as its tab is open. */
const openByItself = (html: string): void => {
  window.open(URL.createObjectURL(new Blob([html], { type: HTML })), '_blank', 'noopener')
}

/** The papers as the crew has them on their phones: one file, with boxes to tick, that needs no signal. */
export default function PhoneView() {
  const id = useId()
  const set = usePaperPlan()
  useIssuedProven(set.plan)
  const [reader, setReader] = useState(ALL)
  const chosen = reader === ALL ? sheets : sheets.filter((sheet) => sheet.reader === reader)
  const { answer: html, isCurrent } = useAnswer(reader, [set], () => phoneSteps(chosen, set))
  return (
    <div className="box box-phone">
      <div className="box-words">
        <label htmlFor={id}>For</label>
        <select id={id} value={reader} onChange={(event) => setReader(event.target.value)}>
          <option value={ALL}>All of the crew</option>
          {readers.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
        <p>
          One file for the crew’s phones. Send it as any other file; it opens without a signal, and what is
          ticked stays on that phone, issue by issue. Nothing is sent anywhere.
        </p>
        <div className="box-bar">
          <button disabled={!html || !isCurrent} onClick={() => html && save(html, set, reader)}>
            <Download size={18} /> Save for phones
          </button>
          <button disabled={!html || !isCurrent} onClick={() => html && openByItself(html)}>
            <ExternalLink size={18} /> Open by itself
          </button>
        </div>
      </div>
      {html ? (
        <iframe className="box-phone-page" title="The papers on a phone" srcDoc={html} />
      ) : (
        <p className="water-none">Making the page …</p>
      )}
    </div>
  )
}
