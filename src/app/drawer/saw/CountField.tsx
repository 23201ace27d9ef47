import { TypedField } from '../../../sidebar/TypedField'

interface CountFieldProps {
  readonly label: string
  readonly shown: string
  readonly most: number
  /** Takes the number; a refusal comes back as its sentence. */
  readonly onCount: (count: number) => string | undefined
}

/** A field for a whole number from 0. Nothing typed is nothing done. */
export function CountField({ label, shown, most, onCount }: CountFieldProps) {
  return (
    <TypedField
      label={label}
      isLabelHidden
      shown={shown}
      onTyped={(text) => {
        const typed = text.trim()
        if (typed === '') return undefined
        const count = Number(typed)
        return /^\d+$/.test(typed) && count <= most
          ? onCount(count)
          : `“${typed}” is not a number from 0 to ${most}.`
      }}
    />
  )
}
