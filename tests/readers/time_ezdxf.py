"""Times ezdxf on a DXF file, for comparison with the benchmark ImportBench: time_ezdxf.py FILE."""

import resource
import sys
import time

import ezdxf

wall, busy = time.perf_counter(), time.process_time()
document = ezdxf.readfile(sys.argv[1])
wall, busy = time.perf_counter() - wall, time.process_time() - busy
memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
print(f"{len(document.modelspace())} entities: {wall:.1f} s, {busy:.1f} s of processor, {memory} MB")
