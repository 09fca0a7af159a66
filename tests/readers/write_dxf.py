"""Writes drawings with ezdxf, and says what ezdxf sees in them: write_dxf.py NAME FOLDER.

It leaves NAME.dxf and NAME.json in the folder. The JSON holds points on every curve, in the units of the file, blocks
resolved by ezdxf, and the length of all curves together. "all" writes every drawing.
"""

import json
import math
import sys
from pathlib import Path

import ezdxf
from ezdxf.disassemble import recursive_decompose

FINE = 1e-4
BEHIND = {"extrusion": (0, 0, -1)}


def lines(document):
    space = document.modelspace()
    # A rectangle of loose lines with an arc over one side, neither in order nor in one direction.
    space.add_line((0, 0), (60, 0))
    space.add_line((60, 30), (60, 0))
    space.add_arc((30, 30), 30, 0, 180)
    space.add_line((0, 0), (0, 30))
    space.add_circle((30, 15), 6)
    space.add_arc((100, 10), 8, 350, 320)
    bulge = math.tan(math.radians(90) / 4)
    corners = [(120, 0, bulge), (125, 5, 0), (125, 15, bulge), (120, 20, 0), (110, 20, -0.3), (110, 0, 0)]
    space.add_lwpolyline(corners, format="xyb", close=True)
    space.add_lwpolyline([(130, 0, 2.5), (140, 0, -2.5), (150, 0, 0)], format="xyb")
    space.add_polyline2d([(160, 0, 1), (170, 0, 1)], format="xyb", close=True)
    space.add_polyline3d([(160, 20, 4), (170, 20, 4), (165, 28, 4)], close=True)
    space.add_polyline3d([(180, 20, 4), (190, 20, 4)])


def curves(document):
    space = document.modelspace()
    space.add_ellipse((0, 0), (20, 5), 0.4)
    space.add_ellipse((60, 0), (0, 15), 0.6, math.radians(30), math.radians(200))
    space.add_ellipse((60, 0), (-12, 9), 0.5, math.radians(300), math.radians(420))
    controls = [(100, 0), (105, 20), (115, -10), (125, 15), (130, 0), (140, 5)]
    space.add_open_spline(controls)
    space.add_spline().set_closed([(x, y - 50, 0) for x, y in controls])
    space.add_rational_spline([(x, y + 50) for x, y in controls], [1, 3, 0.5, 2, 1, 1])
    space.add_open_spline([(x, y + 90) for x, y in controls], degree=2)
    # A quarter of a circle as a rational spline: exact, by weights 1, sqrt(1/2), 1.
    space.add_rational_spline([(150, 0), (160, 0), (160, 10)], [1, math.sqrt(0.5), 1], degree=2)


def blocks(document):
    part = document.blocks.new("PART", base_point=(1, 2))
    part.add_line((1, 2), (11, 2))
    part.add_arc((6, 2), 5, 0, 180)
    part.add_circle((6, 4), 1.5, dxfattribs={"layer": "HOLES"})
    bent = document.blocks.new("BENT")
    bent.add_lwpolyline([(0, 0, 0.5), (10, 0, 0), (10, 6, 1.5), (0, 6, 0)], format="xyb", close=True)
    pair = document.blocks.new("PAIR")
    pair.add_blockref("PART", (0, 0))
    pair.add_blockref("PART", (30, 0), {"xscale": -1, "rotation": 20})
    # Not turned: ezdxf can't stretch a turned part, which shears it.
    row = document.blocks.new("ROW")
    row.add_blockref("PART", (0, 0))
    row.add_blockref("PART", (30, 0), {"xscale": -1})
    document.layers.add("HOLES")
    space = document.modelspace()
    space.add_blockref("PART", (0, 0))
    space.add_blockref("PART", (40, 0), {"xscale": 2, "yscale": 2, "rotation": 30})
    space.add_blockref("PART", (80, 0), {"yscale": -1, "rotation": 100})
    space.add_blockref("PART", (120, 0), {"xscale": 3, "yscale": 1.5, "rotation": 15})
    space.add_blockref("BENT", (160, 0), {"xscale": 0.5, "yscale": 2})
    space.add_blockref("BENT", (190, 0), {"xscale": -1.5, "rotation": 45})
    space.add_blockref("PAIR", (0, 60), {"rotation": -30, "xscale": 1.2, "yscale": 1.2})
    space.add_blockref("ROW", (100, 60), {"xscale": 1.5, "yscale": 0.5, "rotation": 5})
    grid = {"column_count": 3, "row_count": 2, "column_spacing": 15, "row_spacing": 12, "rotation": 10}
    space.add_blockref("PART", (200, 60), grid)
    space.add_blockref("PART", (20, 120), {**BEHIND, "rotation": 25})


def behind(document):
    space = document.modelspace()
    space.add_arc((10, 0), 8, 20, 130, dxfattribs=BEHIND)
    space.add_circle((40, 5), 6, dxfattribs=BEHIND)
    space.add_lwpolyline([(60, 0, 0.4), (80, 0, 0), (75, 12, -1.2)], format="xyb", close=True, dxfattribs=BEHIND)
    space.add_polyline2d([(90, 0, 0.4), (110, 0, 0), (105, 12, -0.2)], format="xyb", dxfattribs=BEHIND)
    space.add_ellipse((-60, 40), (12, 4), 0.5, 0.3, 2.5, dxfattribs=BEHIND)


def inches(document):
    document.header["$INSUNITS"] = 1
    document.modelspace().add_lwpolyline([(0, 0), (8, 0), (8, 4.5, 0.2), (0, 4.5)], format="xyb", close=True)


DRAWINGS = {"lines": lines, "curves": curves, "blocks": blocks, "behind": behind, "inches": inches}


def points_of(entity):
    kind = entity.dxftype()
    if kind == "LINE":
        return [[entity.dxf.start, entity.dxf.end]]
    if kind in ("LWPOLYLINE", "POLYLINE"):
        return [run for part in entity.virtual_entities() for run in points_of(part)]
    if kind == "INSERT":
        return [run for part in entity.virtual_entities() for run in points_of(part)]
    return [list(entity.flattening(FINE))]


def seen(document):
    runs = [run for entity in recursive_decompose(document.modelspace()) for run in points_of(entity)]
    length = sum(a.distance(b) for run in runs for a, b in zip(run, run[1:]))
    return {"length": length, "curves": [thinned(run) for run in runs]}


def thinned(run):
    step = max(1, len(run) // 24)
    kept = [*run[:-1:step], run[-1]]
    return [[round(point.x, 9), round(point.y, 9)] for point in kept]


def write(name, folder, version="R2000"):
    document = ezdxf.new(version, units=4)
    DRAWINGS[name](document)
    document.saveas(folder / f"{name}.dxf")
    text = json.dumps(seen(document), separators=(",", ":"))
    (folder / f"{name}.json").write_text(text + "\n")


if __name__ == "__main__":
    name, folder = sys.argv[1], Path(sys.argv[2])
    for each in DRAWINGS if name == "all" else [name]:
        write(each, folder)
