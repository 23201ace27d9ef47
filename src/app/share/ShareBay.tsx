import { useEffect, useRef, useState } from 'react'
import { usePlanner } from '../../store/react'
import { Dialog } from '../Dialog'
import { type BayLink, bayLink, LONG_LINK } from './bayLink'

interface ShareBayProps {
  readonly onSave: () => void
  readonly onClose: () => void
}

const lengthWords = (link: string): string =>
  link.length > LONG_LINK
    ? `It is ${link.length.toLocaleString()} letters long: mail and chat programs may cut it. A file travels better.`
    : `It is ${link.length.toLocaleString()} letters long.`

/** The link, whole and selected at a press, with what copies it. */
function Link({ made }: { readonly made: BayLink & { readonly ok: true } }) {
  const field = useRef<HTMLTextAreaElement>(null)
  const [said, setSaid] = useState('')
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(made.link)
      setSaid('Copied.')
    } catch {
      field.current?.select()
      setSaid('This browser would not copy it; it is selected now, so copy it by hand.')
    }
  }
  return (
    <>
      <label>
        Link to this bay
        <textarea
          ref={field}
          readOnly
          rows={3}
          value={made.link}
          onFocus={(event) => event.target.select()}
        />
      </label>
      <p>
        The whole bay is in the link itself: nothing is stored anywhere, and whoever has the link has the bay.{' '}
        {lengthWords(made.link)}
        {made.isWithoutKept && ' Versions and the last issue are left out of it, for length.'}
      </p>
      <p role="status">{said}</p>
      <button type="button" onClick={() => void copy()}>
        Copy the link
      </button>
    </>
  )
}

/** Two ways to hand a bay to somebody: a file, and a link that carries it. */
export function ShareBay({ onSave, onClose }: ShareBayProps) {
  const planner = usePlanner()
  const [made, setMade] = useState<BayLink>()
  useEffect(() => {
    const { layout } = planner.store.getState()
    void bayLink(layout, window.location.href.replace(/#.*$/, '')).then(setMade)
  }, [planner])
  return (
    <Dialog title="Share this bay" onClose={onClose}>
      {made?.ok === true && <Link made={made} />}
      {made?.ok === false && <p role="alert">{made.sentence}</p>}
      <footer>
        <button type="button" onClick={onClose}>
          Close
        </button>
        <button type="button" onClick={onSave}>
          Save as a file
        </button>
      </footer>
    </Dialog>
  )
}
