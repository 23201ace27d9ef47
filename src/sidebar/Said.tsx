import { lengthsIn } from '../units/lengthsIn'

/** A sentence whose lengths each stay on one line. Its text is the sentence itself, so what is copied out of it can be typed. */
export function Said({ words }: { readonly words: string }) {
  return lengthsIn(words).map(({ text, isLength }, index) =>
    isLength ? (
      <span key={index} className="unbroken">
        {text}
      </span>
    ) : (
      text
    ),
  )
}
