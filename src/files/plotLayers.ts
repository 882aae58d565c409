import { PLOT_LAYERS, type PlotLayer } from '../drawing/plot.ts'

/** The layers of a plot in a file, in the order they are drawn: what is only read lies on top. */
export const FILE_LAYERS = [...PLOT_LAYERS, 'text'] as const
export type FileLayer = PlotLayer | 'text'

/**
 * A colour for each, as most machines tell their work apart by it: for an SVG and by its number in a DXF (the colour index: 1 red, 5 blue,
 * 7 black or white, 8 grey).
 */
export const LAYER_COLOURS: Readonly<Record<FileLayer, { readonly rgb: string; readonly index: number }>> = {
  cut: { rgb: '#ff0000', index: 1 },
  score: { rgb: '#0000ff', index: 5 },
  mark: { rgb: '#000000', index: 7 },
  text: { rgb: '#808080', index: 8 },
}
