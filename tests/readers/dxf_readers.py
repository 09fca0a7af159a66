"""What ezdxf and GDAL make of a DXF file."""

import logging
import re
import subprocess
import threading

import ezdxf
from ezdxf.math import BoundingBox2d

MILLIMETRES = 4
TOLERANCE = 1e-4

# ezdxf reports repairs while loading only to its log, which all threads share.
loading = threading.Lock()


class Repairs(logging.Handler):
    def __init__(self):
        super().__init__(logging.WARNING)
        self.messages = []

    def emit(self, record):
        self.messages.append(record.getMessage())


def faults(path):
    document, repairs = load(path)
    space = document.modelspace()
    drawn = extents(space)
    return [
        *(f"ezdxf repaired while loading: {message}" for message in repairs),
        *audit(document),
        *undeclared_layers(document, space),
        *header(document, drawn),
        *gdal(path, len(space), drawn),
    ]


def load(path):
    repairs = Repairs()
    logger = logging.getLogger("ezdxf")
    with loading:
        logger.addHandler(repairs)
        try:
            return ezdxf.readfile(path), repairs.messages
        finally:
            logger.removeHandler(repairs)


def audit(document):
    auditor = document.audit()
    found = [*auditor.errors, *auditor.fixes]
    return [f"ezdxf's audit: {entry.message}" for entry in found]


def undeclared_layers(document, space):
    used = {entity.dxf.layer for entity in space}
    return [f"layer {name} is not declared" for name in sorted(used) if name not in document.layers]


def header(document, drawn):
    # R12 knows no unit.
    if document.dxfversion > "AC1009" and document.header.get("$INSUNITS") != MILLIMETRES:
        yield "the unit in the header is not the millimetre"
    low, high = document.header["$EXTMIN"], document.header["$EXTMAX"]
    yield from compare("the header", [*low[:2], *high[:2]], drawn)


def gdal(path, count, drawn):
    # A fine step keeps GDAL's flattened arcs within the tolerance up to a radius of one metre.
    command = ["ogrinfo", "-ro", "-al", "-so", "--config", "OGR_ARC_STEPSIZE", "0.05", str(path)]
    run = subprocess.run(command, capture_output=True, text=True, timeout=300)
    if run.returncode != 0 or run.stderr.strip():
        yield f"GDAL: {run.stderr.strip() or 'failed'}"
        return

    read = int(re.search(r"Feature Count: (\d+)", run.stdout).group(1))
    if read != count:
        yield f"GDAL reads {read} entities, ezdxf {count}"
    numbers = re.search(r"Extent: \((.+), (.+)\) - \((.+), (.+)\)", run.stdout).groups()
    yield from compare("GDAL", map(float, numbers), drawn)


def compare(reader, values, drawn):
    values = list(values)
    if any(abs(value - expected) > TOLERANCE for value, expected in zip(values, drawn)):
        yield f"extents: {reader} says {values}, the lines and arcs {drawn}"


def extents(space):
    """The exact box of all lines and arcs, as x and y of its low corner, then of its high one."""
    box = BoundingBox2d(corner for entity in space for corner in corners(entity))
    return [*box.extmin, *box.extmax]


def corners(entity):
    kind = entity.dxftype()
    if kind == "LINE":
        return [entity.dxf.start.vec2, entity.dxf.end.vec2]
    if kind == "ARC":
        box = entity.construction_tool().bounding_box
        return [box.extmin, box.extmax]
    if kind == "CIRCLE":
        centre, radius = entity.dxf.center, entity.dxf.radius
        return [(centre.x - radius, centre.y - radius), (centre.x + radius, centre.y + radius)]
    if kind in ("LWPOLYLINE", "POLYLINE", "INSERT"):
        return [corner for part in entity.virtual_entities() for corner in corners(part)]
    raise ValueError(f"an entity of the kind {kind} was not expected")
