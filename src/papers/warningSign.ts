/** The triangle with its bang, in parts of its size from its upper left corner; the pen of its edge in mm. */
export const WARNING_SIGN = {
  triangle: [
    { x: 0.5, y: 0.06 },
    { x: 0.98, y: 0.92 },
    { x: 0.02, y: 0.92 },
  ],
  penMm: 0.4,
  bar: { x: 0.5, fromY: 0.36, toY: 0.64, pen: 0.1 },
  dot: { x: 0.5, y: 0.78, radius: 0.06 },
} as const
