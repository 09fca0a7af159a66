"""What libxml2, librsvg and Chromium make of an SVG file."""

import re
import subprocess
import tempfile
from pathlib import Path
from xml.etree import ElementTree

# Both renderers round a page to whole pixels of 1/96 inch, and Chromium's A4 and A3 pages are a little off besides.
PAGE_TOLERANCE_MM = 0.35
# librsvg shrinks a sheet that is not a whole number of pixels by up to this part.
SCALE_TOLERANCE = 0.0015
LONGEST_SIDE_PX = 4000
MM_PER_POINT = 25.4 / 72

CHROMIUM = [
    "chromium",
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
    "--no-pdf-header-footer",
]


def faults(path):
    run(["xmllint", "--noout", "--nonet", path])
    size, fault = declared_size(path)
    if fault:
        return [fault]

    with tempfile.TemporaryDirectory() as folder:
        by_librsvg, by_chromium = Path(folder, "librsvg.pdf"), Path(folder, "chromium.pdf")
        run(["rsvg-convert", "--format", "pdf", "--output", by_librsvg, path])
        profile, url = f"--user-data-dir={folder}/profile", path.resolve().as_uri()
        run([*CHROMIUM, profile, f"--print-to-pdf={by_chromium}", url])
        return [
            *page("librsvg", by_librsvg, size),
            *page("Chromium", by_chromium, size),
            *same_ink(ink(by_librsvg, size), ink(by_chromium, size), max(size)),
        ]


def run(command):
    done = subprocess.run(command, capture_output=True, timeout=300)
    if done.returncode != 0:
        message = done.stderr.decode(errors="replace").strip()
        raise RuntimeError(f"{command[0]} failed: {message}")
    return done.stdout


def declared_size(path):
    root = ElementTree.parse(path).getroot()
    width, height = root.get("width", ""), root.get("height", "")
    if not (width.endswith("mm") and height.endswith("mm")):
        return None, "width and height are not in mm"
    size = float(width[:-2]), float(height[:-2])
    view = [float(number) for number in root.get("viewBox", "").split()]
    if tuple(view[2:]) != size:
        return None, f"the viewBox {view} has not the size {size}"
    return size, None


def page(reader, pdf, size):
    facts = run(["pdfinfo", pdf]).decode()
    pages = int(re.search(r"Pages:\s+(\d+)", facts).group(1))
    if pages != 1:
        yield f"{reader} makes {pages} pages"
    points = re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", facts).groups()
    drawn = [float(value) * MM_PER_POINT for value in points]
    if any(abs(a - b) > PAGE_TOLERANCE_MM for a, b in zip(drawn, size)):
        yield f"{reader} makes a page of {drawn[0]:.2f} x {drawn[1]:.2f} mm, not {size[0]} x {size[1]} mm"


def same_ink(first, second, longest):
    if first is None or second is None:
        yield "a renderer draws nothing"
        return
    tolerance = SCALE_TOLERANCE * longest + 3 * longest / LONGEST_SIDE_PX
    if any(abs(a - b) > tolerance for a, b in zip(first, second)):
        yield f"librsvg draws ink in {first} mm, Chromium in {second} mm"


def ink(pdf, size):
    """The box of what is not white on the first page: left, top, right, bottom in mm."""
    scale = LONGEST_SIDE_PX / max(size)
    command = ["pdftoppm", "-gray", "-singlefile", "-r", f"{scale * 25.4:.6f}", pdf]
    _, dimensions, _, pixels = run(command).split(b"\n", 3)
    width, height = map(int, dimensions.split())
    blank = b"\xff" * width
    rows = [(y, pixels[y * width : (y + 1) * width]) for y in range(height)]
    inked = [(y, row) for y, row in rows if row != blank]
    if not inked:
        return None
    left = min(width - len(row.lstrip(b"\xff")) for _, row in inked)
    right = max(len(row.rstrip(b"\xff")) for _, row in inked)
    box = left, inked[0][0], right, inked[-1][0] + 1
    return [round(value / scale, 2) for value in box]
