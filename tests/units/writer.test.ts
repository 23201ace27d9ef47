import { expect, test } from 'vitest'
import { gph, gpm } from '../../src/units/flow'
import { inches } from '../../src/units/length'
import { asTyped, inTrench } from '../../src/units/precision'
import { gallons } from '../../src/units/volume'
import { type Writer, writerFor } from '../../src/units/writer'

test('a feet-and-inches writer, to 1/16 in unless the work asks otherwise', () => {
  const saw = writerFor('feet-inches')
  expect([saw.length(1689.1), saw.onTape(1689.1), saw.fall(1000 / 96)]).toEqual([
    `5' 6-1/2"`,
    `66-1/2"`,
    '1/8 in/ft',
  ])
  expect(saw.length(1690)).toBe(`5' 6-9/16"`)
  expect(writerFor('feet-inches', inTrench).length(1690)).toBe(`5' 6-1/2"`)
})

test('a metric writer, to the whole millimetre unless it writes what is typed', () => {
  const saw = writerFor('metric')
  expect([saw.length(1690), saw.onTape(1690.5), saw.fall(10)]).toEqual(['1690 mm', '1691 mm', '10 mm/m'])
  expect(writerFor('metric', inTrench).length(1690.4)).toBe('1690 mm')
  expect(writerFor('metric', asTyped).length(1690.4)).toBe('1690.4 mm')
})

const spoken = (writer: Writer) => [
  writer.flow(gph(4)),
  writer.flowTotal(gpm(32)),
  writer.sightTube(184),
  writer.pumpHead(3810),
  writer.temperature(20),
  writer.velocity(0.98),
  writer.volume(gallons(120)),
  writer.share(0.316),
  writer.watts(349.6),
]

test('water is written to what the crew can use', () => {
  // By hand: 4 x 3.7854 = 15.14 L; 32 x 3.7854 = 121.1 L; 184 / 25.4 = 7.244 in; 3.81 / 0.3048 = 12.5 ft;
  // 0.98 / 0.3048 = 3.215 ft; 120 x 3.7854 = 454.2 L.
  expect(spoken(writerFor('feet-inches'))).toEqual([
    '4.0 gph',
    '32.0 gpm',
    '7-1/4"',
    '12.5 ft',
    '68 °F',
    '3.2 ft/s',
    '120 gal',
    '31.6 %',
    '350 W',
  ])
  expect(spoken(writerFor('metric'))).toEqual([
    '15.1 L/h',
    '121 L/min',
    '184 mm',
    '3.81 m',
    '20 °C',
    '0.98 m/s',
    '454 L',
    '31.6 %',
    '350 W',
  ])
  // A trench is dug to 1/8 in, but a sight tube is read to 1/4 in there too.
  expect(writerFor('feet-inches', inTrench).sightTube(inches(7 + 1 / 8))).toBe(`7-1/4"`)
})

test('exact water has a digit more, and another where there is one', () => {
  const { flow, temperature, share, sightTube } = writerFor('feet-inches').exact()
  expect([flow(gph(4)), flow(gph(4.125)), flow(gph(4.1254))]).toEqual(['4.00 gph', '4.125 gph', '4.125 gph'])
  expect([temperature(20), temperature(20.5), share(0.03)]).toEqual(['68.0 °F', '68.9 °F', '3.00 %'])
  expect(sightTube(inches(7 + 3 / 64))).toBe(`7-3/64"`)
  expect(writerFor('metric').exact().flow(gph(4))).toBe('15.142 L/h')
})

test('what is no number has no value, and nothing has no sign', () => {
  for (const units of ['feet-inches', 'metric'] as const) {
    const { exact: _exact, ...writer } = writerFor(units)
    for (const write of Object.values(writer))
      expect([write(NaN), write(Infinity), write(-Infinity)]).toEqual(['—', '—', '—'])
    expect(writer.flow(-0.001)).toMatch(/^0\.0 /)
    expect(writer.flowTotal(-0)).toMatch(/^0/)
  }
  expect(writerFor('metric').temperature(-0.4)).toBe('0 °C')
  expect(writerFor('metric').temperature(-2)).toBe('-2 °C')
})
