import { type KeyboardEvent, useState } from 'react'
import type { ParsedLength } from '../../units/parseLength'

interface LevelFieldProps {
  readonly name: string
  readonly shown: string
  readonly read: (text: string) => ParsedLength
  readonly onLevel: (levelMm: number) => void
  readonly onDrop: () => void
}

/** A level typed: Enter or leaving it takes what stands there, Escape gives up; a text that is none stays, with its sentence. */
export function LevelField({ name, shown, read, onLevel, onDrop }: LevelFieldProps) {
  const [draft, setDraft] = useState(shown)
  const [refusal, setRefusal] = useState('')
  const settle = () => {
    if (draft === shown) return onDrop()
    const level = read(draft)
    if (level.ok) onLevel(level.mm)
    else setRefusal(level.sentence)
  }
  const press = (event: KeyboardEvent) => {
    // Neither the grip round it nor the page has a say in what is typed.
    event.stopPropagation()
    if (event.key === 'Enter') settle()
    if (event.key === 'Escape') onDrop()
  }
  return (
    <>
      <input
        className="pole-field"
        aria-label={name}
        aria-invalid={refusal !== ''}
        value={draft}
        autoFocus
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => setDraft(event.target.value)}
        onFocus={(event) => event.currentTarget.select()}
        onBlur={settle}
        onKeyDown={press}
      />
      {refusal && (
        <p className="pole-stopped" role="alert">
          {refusal}
        </p>
      )}
    </>
  )
}
