import type { PathCommand } from './drawing.ts'

/** A coordinate as an SVG carries it, without digits nobody can see. */
export function svgNumber(value: number, decimals = 4): number {
  const factor = 10 ** decimals
  const rounded = Math.round(value * factor) / factor
  return rounded === 0 ? 0 : rounded
}

/** Path commands as the `d` attribute of an SVG path, to a ten-thousandth of a millimetre unless told otherwise. */
export function svgPath(commands: readonly PathCommand[], decimals = 4): string {
  const n = (value: number) => String(svgNumber(value, decimals))
  return commands
    .map((command) => {
      switch (command[0]) {
        case 'M':
        case 'L':
          return `${command[0]}${n(command[1])} ${n(command[2])}`
        case 'A':
          return `A${n(command[1])} ${n(command[1])} 0 ${command[2]} ${command[3]} ${n(command[4])} ${n(command[5])}`
        case 'C':
          return `C${command
            .slice(1)
            .map((value) => n(value as number))
            .join(' ')}`
        default:
          return 'Z'
      }
    })
    .join('')
}
