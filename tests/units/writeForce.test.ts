import { describe, expect, test } from 'vitest'
import { inchPounds, ksi, poundsForce, psf, psi } from '../../src/units/force'
import { pounds } from '../../src/units/mass'
import { type Writer, writerFor } from '../../src/units/writer'

const spoken = (writer: Writer) => [
  writer.mass(pounds(25)),
  writer.force(poundsForce(86.2)),
  writer.stress(ksi(9.871)),
  writer.stress(psi(209)),
  writer.pressure(psf(1500)),
  writer.moment(inchPounds(515.4)),
]

// By hand with the factors of NIST Special Publication 811 (2008), appendix B.8: 25 x 0.45359237 = 11.34 kg; 86.2 x 4.448222
// = 383.4 N; 9.871 x 6.894757 = 68.06 MPa; 209 x 0.006894757 = 1.441 MPa; 1500 x 0.04788026 = 71.82 kPa;
// 515.4 x 0.1129848 = 58.23 N·m.
test('loads are written to what the crew can use', () => {
  expect(spoken(writerFor('feet-inches'))).toEqual([
    '25 lb',
    '86 lb',
    '9.9 ksi',
    '209 psi',
    '1500 psf',
    '515 lb-in',
  ])
  expect(spoken(writerFor('metric'))).toEqual([
    '11.3 kg',
    '383 N',
    '68.1 MPa',
    '1.4 MPa',
    '71.8 kPa',
    '58.2 N·m',
  ])
})

describe('exactly', () => {
  test('they have a digit more, and another where there is one', () => {
    const { mass, force, pressure, moment } = writerFor('feet-inches').exact()
    expect([mass(pounds(25)), mass(pounds(25.25)), force(poundsForce(50))]).toEqual([
      '25.0 lb',
      '25.25 lb',
      '50.0 lb',
    ])
    expect([pressure(psf(1500)), moment(inchPounds(515.4))]).toEqual(['1500.0 psf', '515.4 lb-in'])
    expect(writerFor('metric').exact().mass(11.3398)).toBe('11.34 kg')
  })

  test('a field has ksi alone, so that a bare number typed over it stays in one unit', () => {
    expect(writerFor('feet-inches').exact().stress(psi(209))).toMatch(/ksi$/)
    expect(writerFor('feet-inches').exact().stress(ksi(30))).toBe('30.00 ksi')
  })
})

test('steel is read in ksi and wood in psi, whichever way it is loaded', () => {
  const { stress } = writerFor('feet-inches')
  expect(stress(psi(1999))).toBe('1999 psi')
  expect(stress(psi(2050))).toMatch(/ ksi$/)
})

test('a refused member has no number, and nothing has no sign', () => {
  for (const units of ['feet-inches', 'metric'] as const) {
    const { mass, force, stress, pressure, moment } = writerFor(units)
    for (const write of [mass, force, stress, pressure, moment]) {
      expect([write(NaN), write(Infinity)]).toEqual(['—', '—'])
      expect(write(-1e-9)).not.toMatch(/^-/)
    }
  }
})

test('an uplift keeps its minus', () => {
  expect(writerFor('feet-inches').force(poundsForce(-2.9))).toBe('-3 lb')
})
