import type { OutlineProblem } from '../core/instrument/outlineFromPath.ts'
import type { DrawnFileProblem, LeftOutKind } from '../record/drawnFile.ts'

/** Why a drawing was not read, and what would be. */
export const DRAWN_FILE_PROBLEM: Readonly<Record<DrawnFileProblem, string>> = {
  tooLarge: 'This file is larger than 5 MB: save the outline alone, without pictures, and open that.',
  tooMany: 'This file holds more than 20,000 lines and curves: save the outline alone, and open that.',
  notSvg: 'This is no SVG drawing: open a file saved as SVG or as DXF.',
  notXml: 'This SVG file cannot be read: it is damaged, or was cut short. Save it again from the program that drew it.',
  doctype:
    'This SVG file begins with a document type (“<!DOCTYPE”) that defines things of its own, which is not read for safety: save it as plain SVG.',
  badPath: 'A path in this SVG file has coordinates or a length that cannot be read: save it again as plain SVG.',
  badTransform: 'A transform in this SVG file cannot be read: save it with its transforms applied to the paths.',
  outOfRange:
    'A line in this file lies more than 100 m away, or nowhere: move the outline near the origin and save it again.',
  notDxf:
    'This DXF file cannot be read: it is damaged, was cut short, or is no text DXF. Save it again as text (ASCII) DXF.',
  binaryDxf: 'This is a binary DXF file: save it as text (ASCII) DXF.',
  badEntity:
    'A line or curve in this DXF file is incomplete or contradicts itself: delete it, or redraw it, and save again.',
  onlyBlocks:
    'All that is drawn in this DXF file lies in blocks: take the blocks apart into lines and arcs, and save it again.',
  onlyFit:
    'The splines in this DXF file only name the points they go through: save them with control points, or as polylines.',
  nothingDrawn: 'Nothing in this file could be an outline: it needs a path, polyline, spline, or lines and arcs.',
}

/** What a drawing also held and was not read; follows its count. */
export const LEFT_OUT: Readonly<Record<LeftOutKind, string>> = {
  text: 'texts or dimensions',
  picture: 'pictures or drawings set into the drawing',
  reference: 'blocks or copies of something drawn elsewhere: take them apart to have them read',
  fitSpline: 'splines that only name the points they go through: save them with control points to have them read',
  tilted: 'lines that do not lie flat in the drawing',
  hidden: 'hidden parts',
  other: 'things that are no lines, arcs or curves',
}

/** Why a drawn line gives no body outline, and what would. */
export const OUTLINE_PROBLEM: Readonly<Record<OutlineProblem, string>> = {
  nothing: 'There is no line here: choose a line of the drawing and say its unit.',
  tooSmall: 'This line is smaller than any body: choose the outline, and check the unit of the drawing.',
  tooLarge: 'This line is larger than 3 m: choose the outline, and check the unit of the drawing.',
  open: 'This line neither closes nor runs from tail to neck: draw a half from the centreline to the centreline, or close the outline.',
  noAxis: 'The two sides differ too much for a centreline to be found: say whether it runs along or up the drawing.',
  crossesAxis:
    'This line does not cross its centreline just twice, at the tail and at the neck: move the centreline, or choose the outline alone.',
}
