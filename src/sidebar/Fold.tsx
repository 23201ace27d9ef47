import { type ReactNode, useState } from 'react'
import './fold.css'

interface FoldProps {
  readonly title: ReactNode
  readonly isOpen?: boolean
  readonly children: ReactNode
}

/** A heading that opens. What is folded away is not drawn, so that a long list costs nothing. */
export function Fold({ title, isOpen: startsOpen = false, children }: FoldProps) {
  const [isOpen, setIsOpen] = useState(startsOpen)
  return (
    <details className="fold" open={isOpen} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {isOpen && <div className="fold-body">{children}</div>}
    </details>
  )
}
