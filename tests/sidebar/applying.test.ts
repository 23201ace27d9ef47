import { expect, test } from 'vitest'
import { sumpSchema } from '../../src/parts/sump/schema'
import { applying, fieldList } from '../../src/sidebar/fieldList'

const sizes = ['lengthMm', 'widthMm', 'bottomLengthMm', 'bottomWidthMm']

const shownFor = (shape: string) =>
  applying(fieldList(sumpSchema), { shape })
    .map(({ key }) => key)
    .filter((key) => sizes.includes(key))

test('a pit is asked for the sizes that its shape has', () => {
  expect(shownFor('box')).toEqual(['lengthMm', 'widthMm'])
  expect(shownFor('round')).toEqual(['widthMm'])
  expect(shownFor('sloped')).toEqual(sizes)
})

test('nothing else of it is left out', () => {
  expect(fieldList(sumpSchema).length - applying(fieldList(sumpSchema), { shape: 'round' }).length).toBe(3)
})
