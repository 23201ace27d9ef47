import { type ReactNode, useEffect, useRef } from 'react'

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
      onClick={(event) => event.target === sheet.current && onClose()}
    >
      <h2>{title}</h2>
      {children}
    </dialog>
  )
}
