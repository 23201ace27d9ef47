import { type KeyboardEvent, useId, useState } from 'react'
import './fields.css'
import { Said } from './Said'

interface TypedFieldProps {
  readonly label: string
  /** What the field holds now, in words. */
  readonly shown: string
  /** Takes the typed text; a refusal comes back as its sentence. */
  readonly onTyped: (text: string) => string | undefined
  readonly help?: string | undefined
  readonly isDisabled?: boolean
  /** The label is only heard, where a heading already shows it. */
  readonly isLabelHidden?: boolean
  /** Stands in it while it is empty. */
  readonly placeholder?: string
  /** Words want the whole width. */
  readonly isWide?: boolean
}

/**
 * A field that takes what builders type. Enter or leaving it takes the text, Escape gives back what it held; a text
 * that is refused stays to be mended, with the sentence under it.
 */
export function TypedField(props: TypedFieldProps) {
  const {
    label,
    shown,
    onTyped,
    help,
    placeholder,
    isDisabled = false,
    isLabelHidden = false,
    isWide = false,
  } = props
  const [draft, setDraft] = useState<string>()
  const [refusal, setRefusal] = useState<string>()
  const id = useId()
  const drop = () => {
    setDraft(undefined)
    setRefusal(undefined)
  }
  const settle = () => {
    if (draft === undefined || draft === shown) return drop()
    const sentence = onTyped(draft)
    if (sentence === undefined) drop()
    else setRefusal(sentence)
  }
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Enter') settle()
    if (event.key !== 'Escape' || draft === undefined) return
    // The page's own Escape must not also drop the selection.
    event.stopPropagation()
    drop()
  }
  return (
    <div className={isWide ? 'field field-wide' : 'field'}>
      <label htmlFor={id} className={isLabelHidden ? 'only-heard' : undefined}>
        {label}
      </label>
      <input
        id={id}
        value={draft ?? shown}
        placeholder={placeholder}
        disabled={isDisabled}
        autoComplete="off"
        spellCheck={false}
        aria-invalid={refusal !== undefined}
        aria-describedby={`${id}-said`}
        onChange={(event) => setDraft(event.target.value)}
        onFocus={(event) => event.currentTarget.select()}
        onBlur={settle}
        onKeyDown={press}
      />
      <p id={`${id}-said`} className={refusal ? 'field-refused' : 'field-help'} role={refusal && 'alert'}>
        <Said words={refusal ?? help ?? ''} />
      </p>
    </div>
  )
}
