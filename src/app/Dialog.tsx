import { type ReactNode, useEffect, useRef } from 'react'
import { Said } from '../sidebar/Said'

interface DialogProps {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}

/** A sheet laid over the page; Escape and a press outside put it away. */
export function Dialog({ title, onClose, children }: DialogProps) {
  const sheet = useRef<HTMLDialogElement>(null)
  useEffect(() => sheet.current?.showModal(), [])
  return (
    <dialog
      ref={sheet}
      className="sheet-dialog"
      aria-label={title}
      onClose={onClose}
      // The press, not the click: text that is selected to beyond the edge ends in a click out there.
      onPointerDown={(event) => event.target === sheet.current && onClose()}
    >
      <div className="sheet-dialog-sheet">
        <h2>{title}</h2>
        {children}
      </div>
    </dialog>
  )
}

interface Choice {
  readonly key: string | number
  readonly title: string
  readonly line: string
  readonly onTake: () => void
}

/** A sheet to choose one of a few things from. */
export function ChoiceDialog({
  title,
  choices,
  none,
  onClose,
}: Omit<DialogProps, 'children'> & { readonly choices: readonly Choice[]; readonly none?: string }) {
  return (
    <Dialog title={title} onClose={onClose}>
      {choices.length === 0 && <p>{none}</p>}
      <ul>
        {choices.map(({ key, title: name, line, onTake }) => (
          <li key={key}>
            <button className="sheet-choice" onClick={onTake}>
              <strong>{name}</strong>
              <span>{line}</span>
            </button>
          </li>
        ))}
      </ul>
      <footer>
        <button onClick={onClose}>Cancel</button>
      </footer>
    </Dialog>
  )
}

interface FormEndProps {
  /** Why the form can't be taken as it stands; empty where it can. */
  readonly refused: string
  readonly does: string
  readonly isWorking?: boolean
  readonly onClose: () => void
}

/** The last lines of a form on a sheet: what is wrong with it, and the two ways out. */
export function FormEnd({ refused, does, isWorking = false, onClose }: FormEndProps) {
  return (
    <>
      <p className="refused" role="alert">
        <Said words={refused} />
      </p>
      <footer>
        <button type="button" onClick={onClose}>
          Cancel
        </button>
        <button type="submit" disabled={isWorking}>
          {does}
        </button>
      </footer>
    </>
  )
}
