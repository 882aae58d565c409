import type { Figure } from '../core/figure.ts'
import type { Point } from '../core/geometry/point.ts'
import type { NumberKey } from '../core/numbers.ts'
import type { Quantity } from '../core/quantity.ts'

/**
 * A drawing as data: shapes in true millimetres, x to the right, y DOWN, as a screen has it. The plan's own frame seen from the
 * front, neck to the right, is already so; a writer for paper or a file with y up flips once.
 * Whatever has a size on the sheet and not on the instrument (figures, ticks, distance of dimension lines) carries an anchor
 * only and is laid out by `layDrawing` for the sheet at hand.
 */
export interface Drawing {
  readonly name: DrawingName
  readonly seenFrom: SeenFrom
  /** What the shapes cover, without figures and dimension lines. */
  readonly bounds: Bounds
  /** How many times larger heights are drawn than they are; 1 = true. */
  readonly heightsTimes: number
  readonly marks: EdgeMarks
  readonly shapes: readonly Shape[]
  /** Room inside the piece where its title may stand, on a template that is cut out. */
  readonly titleRoom?: Bounds
}

export type DrawingName = BodyDrawingName | BoxDrawingName | NeckDrawingName | CuttingDrawingName | TemplateDrawingName

/** Pieces drawn to be cut out at full size, where no drawing of the instrument shows them alone. */
export type TemplateDrawingName =
  | 'outlineTemplate'
  | 'formLine'
  | 'contourBoard'
  | 'archTemplate'
  | 'slottingRuler'
  | 'bridgeGauge'
  | 'neckSetGauge'
  | 'bindingGauge'

/** Of what a maker has in hand, and not of the instrument. */
export type CuttingDrawingName = 'plank'

export type BodyDrawingName =
  | 'plan'
  | 'side'
  | 'section'
  | 'domes'
  | 'inside'
  | 'blankTreble'
  | 'blankHorn'
  | 'blankBass'
  | 'bevels'
  | 'blockTail'
  | 'blockNeck'
  | 'rosette'

export const BOX_DRAWINGS = ['bracingTop', 'bracingBack', 'braceSide', 'edgeSection'] as const
export type BoxDrawingName = (typeof BOX_DRAWINGS)[number]
export const isBoxDrawing = (name: DrawingName): name is BoxDrawingName =>
  (BOX_DRAWINGS as readonly DrawingName[]).includes(name)

export const NECK_DRAWINGS = ['fretboard', 'strings', 'neckSet', 'bridge', 'bridgeSection', 'neckSide', 'head'] as const
export type NeckDrawingName = (typeof NECK_DRAWINGS)[number]
export const isNeckDrawing = (name: DrawingName): name is NeckDrawingName =>
  (NECK_DRAWINGS as readonly DrawingName[]).includes(name)

export type SeenFrom =
  | 'front'
  | 'back'
  | 'inside'
  | 'bassSide'
  | 'trebleSide'
  | 'section'
  | 'glueFace'
  | 'tail'
  | 'face'

export interface Bounds {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}

/** What lies at each edge of the sheet. */
export interface EdgeMarks {
  readonly top?: EdgeMark
  readonly bottom?: EdgeMark
  readonly left?: EdgeMark
  readonly right?: EdgeMark
  /** Those at top and bottom have room in the corners of the drawing, at its right. */
  readonly inCorners?: true
}
export type EdgeMark = 'bass' | 'treble' | 'tail' | 'neck' | 'horn'

/** One step of a path. Arcs are circular: radius, whether the longer way round, whether clockwise on the sheet, end. */
export type PathCommand =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['A', number, 0 | 1, 0 | 1, number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z']

/**
 * What a line means: a visible edge (wide), a hidden one (dashed), a centre line (long dash, dot), a fine line, a line to saw or cut
 * along (wide), a slot sawn in but not through, a line of the dimensioning, or one that only helps to see (dotted).
 */
export type LineRole = 'edge' | 'hidden' | 'centre' | 'thin' | 'cut' | 'slot' | 'dimension' | 'ghost'

/** A number of the instrument, where it stands among all numbers. `row` counts from 0 in keys with rows. */
export interface NumberRef {
  readonly key: NumberKey
  readonly row: number | null
}

/** The number a dimension shows. */
export interface Figured extends NumberRef {
  readonly value: Figure
  readonly quantity: Quantity
  /** What stands before the figure. */
  readonly sign?: 'R'
  /** Its place says on which side it lies: a minus would only repeat that. */
  readonly isUnsigned?: true
}

/** `isKept`: part of a view that is the same for either hand, beside one that is not. */
export type Shape = (PathShape | Dimension | Label | Station) & { readonly isKept?: true }

export interface PathShape {
  readonly kind: 'path'
  readonly role: LineRole
  readonly commands: readonly PathCommand[]
  /** Lies over what was drawn before it and hides it. */
  readonly covers?: true
  /** A thin part cut through: drawn solid, this thick. */
  readonly solidMm?: number
}

export type Dimension = Linear | Ordinate | RadiusDimension | AngleDimension

export type Side = 'above' | 'below' | 'left' | 'right'

/** A length between two points, measured along x (above, below) or along y (left, right). */
export interface Linear {
  readonly kind: 'linear'
  readonly figured: Figured
  readonly from: Point
  readonly to: Point
  /** On which side the dimension line runs. */
  readonly side: Side
  /**
   * outside: clear of the drawing at `baseMm`, in the first free lane. running: the same, sharing a lane with all that start at the same
   * place. Both leave `lanesFree` lanes open for figures of another kind. inPlace: straight between the two points, the figure at part
   * `figureAt` of the way, or past the first point where it does not fit.
   */
  readonly line:
    | { readonly way: 'outside' | 'running'; readonly baseMm: number; readonly lanesFree?: number }
    | { readonly way: 'inPlace'; readonly figureAt: number }
}

/** A figure standing at a station, reading from the right, without lines of its own; the less urgent give way where room is short. */
export interface Ordinate {
  readonly kind: 'ordinate'
  readonly figured: Figured
  readonly at: Point
  /** Direction on the sheet in which the figure stands off. */
  readonly away: Point
  /** 0 comes first. */
  readonly urgency: number
  readonly turned: boolean
}

/** A radius, by a leader from the arc outward. */
export interface RadiusDimension {
  readonly kind: 'radius'
  readonly figured: Figured
  readonly centre: Point
  readonly radiusMm: number
  /** Direction of the leader, clockwise on the sheet from +x. */
  readonly towardRad: number
  /** How far from the centre the leader ends. */
  readonly reachMm: number
}

/** An angle between two directions from a point, clockwise on the sheet. */
export interface AngleDimension {
  readonly kind: 'angle'
  readonly figured: Figured
  readonly vertex: Point
  readonly fromRad: number
  readonly toRad: number
  readonly radiusMm: number
  /** Part of the way along the arc at which the figure stands. */
  readonly figureAt: number
}

/** A word at a place: its text is in words/. */
export interface Label {
  readonly kind: 'label'
  readonly word: LabelWord | EdgeMark
  readonly at: Point
  /** Direction on the sheet in which the word stands off; (0, 0): centred on the place. */
  readonly away: Point
  /** Left out where there is no room for it. */
  readonly isOptional: boolean
}

export type LabelWord =
  | 'rimPlane'
  | 'straightTaper'
  | 'saddleLine'
  | 'flatFrom'
  | 'waistMark'
  | 'showFace'
  | 'straightEdge'
  | 'cutLine'
  | 'lowerBout'
  | 'waist'
  | 'upperBout'
  | 'hornTip'
  | 'neckCentre'
  | 'bassFromInside'
  | 'trebleFromInside'
  | 'topPlate'
  | 'backPlate'
  | 'topBevelBothSides'
  | 'backBevelBothSides'
  | 'topBevel'
  | 'backBevel'
  | 'contourFromAbove'
  | 'blockFromSide'
  | 'glueFace'
  | 'joint'
  | 'nut'
  | 'saddle'
  | 'fretPlane'
  | 'grain'
  | 'centreline'
  | 'referenceEdge'
  | 'keepSide'
  | 'bodyOutline'
  | 'forBlock'
  | 'checksBlock'
  | 'purfling'

/** Which stations: of both sides or the bass side, or of a treble side of its own; the frets of a board, the braces of a plate, or the pieces on a plank. */
export type StationList = 'rim' | 'trebleRim' | 'frets' | 'braces' | 'pieces'

/** A station: a tick across the line, on one half or both, with its number where there is room. */
export interface Station {
  readonly kind: 'station'
  readonly list: StationList
  readonly row: number
  /** What is written there, where it is not the row itself. */
  readonly number?: number
  readonly ticks: readonly { readonly from: Point; readonly to: Point }[]
  readonly numberAt: Point
  readonly away: Point
  readonly urgency: number
}
