/** Degrees Celsius of a temperature typed in degrees Fahrenheit: 68 F, 68,5 °F. null: it is none. Source: definition, 32 °F are 0 °C and 212 °F are 100. */
export function parseFahrenheit(text: string): number | null {
  const found = /^([-−]?)(\d{1,4}(?:[.,]\d{1,3})?)°?f$/iu.exec(text.replaceAll(/\s/gu, ''))
  if (found === null) return null
  const fahrenheit = Number((found[2] ?? '').replace(',', '.')) * (found[1] === '' ? 1 : -1)
  return ((fahrenheit - 32) * 5) / 9
}
