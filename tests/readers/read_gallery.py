#!/usr/bin/env python3
"""Reads every SVG and DXF file below a folder with programs that PatternGen did not write.

Usage: read_gallery.py FOLDER
Prints each fault; exit code 0 when there is none, 1 when there is, 2 when there is nothing to read.
"""

import os
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import dxf_readers
import svg_readers

READERS = {".dxf": dxf_readers.faults, ".svg": svg_readers.faults}


def faults_of(path):
    try:
        return READERS[path.suffix](path)
    except Exception as error:  # a reader that fails in a new way is a fault of the file, not the end of the run
        return [f"{type(error).__name__}: {error}"]


def main(folder):
    files = sorted(path for path in folder.rglob("*") if path.suffix in READERS)
    if not files:
        print(f"no SVG or DXF file below {folder}", file=sys.stderr)
        return 2

    with ThreadPoolExecutor(os.cpu_count()) as pool:
        results = list(zip(files, pool.map(faults_of, files)))
    for path, faults in results:
        for fault in faults:
            print(f"{path.relative_to(folder)}: {fault}")

    faulty = sum(1 for _, faults in results if faults)
    print(f"outside readers: {len(files)} files read, {faulty} with faults")
    return 1 if faulty else 0


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    sys.exit(main(Path(sys.argv[1])))
