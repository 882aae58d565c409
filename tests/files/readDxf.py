"""Reads a DXF with ezdxf and prints what it found as JSON: header, layers, what the audit says, and every entity with points along it."""

import json
import sys

import ezdxf
from ezdxf import path

FLATTEN_MM = 0.0005


def entity(one):
    found = {"type": one.dxftype(), "layer": one.dxf.layer, "lineType": one.dxf.get("linetype", "BYLAYER")}
    if one.dxftype() == "TEXT":
        found["text"] = one.plain_text()
        found["height"] = one.dxf.height
        found["rotation"] = one.dxf.rotation
        found["align"] = one.get_align_enum().name if hasattr(one, "get_align_enum") else one.get_align()
        found["points"] = [list(one.dxf.align_point)[:2]]
        return found
    if one.dxftype() == "SPLINE":
        found["degree"] = one.dxf.degree
        found["knots"] = [float(knot) for knot in one.knots]
        found["controlPoints"] = len(one.control_points)
    if one.dxftype() == "LWPOLYLINE":
        found["isClosed"] = bool(one.closed)
        found["vertices"] = len(one)
    if one.dxftype() in ("ARC", "CIRCLE"):
        found["radius"] = one.dxf.radius
        found["centre"] = list(one.dxf.center)[:2]
    # As a path, ezdxf has an arc as cubics; its own points along it are exact.
    along = one if one.dxftype() in ("ARC", "CIRCLE") else path.make_path(one)
    found["points"] = [[point.x, point.y] for point in along.flattening(FLATTEN_MM)]
    return found


drawing = ezdxf.readfile(sys.argv[1])
auditor = drawing.audit()
print(
    json.dumps(
        {
            "version": drawing.dxfversion,
            "release": drawing.acad_release,
            "units": drawing.units,
            "measurement": drawing.header.get("$MEASUREMENT"),
            "errors": [error.message for error in auditor.errors],
            "fixes": [fix.message for fix in auditor.fixes],
            "layers": {layer.dxf.name: layer.dxf.color for layer in drawing.layers},
            "lineTypes": [one.dxf.name for one in drawing.linetypes],
            "entities": [entity(one) for one in drawing.modelspace()],
        }
    )
)
