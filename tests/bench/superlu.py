"""Times SuperLU on a symmetric matrix: factor, solve and ordering, the best of its usual settings.

Arguments: file with int64 count of rows and of entries, then int32 rows, int32 columns, float64 values.
Prints one line for each setting: name, seconds.
"""
import sys
import time

import numpy
import scipy.sparse
import scipy.sparse.linalg

with open(sys.argv[1], "rb") as file:
    size, count = numpy.fromfile(file, numpy.int64, 2)
    rows = numpy.fromfile(file, numpy.int32, count)
    columns = numpy.fromfile(file, numpy.int32, count)
    values = numpy.fromfile(file, numpy.float64, count)
matrix = scipy.sparse.csc_matrix((values, (rows, columns)), shape=(size, size))
right = numpy.ones(size)
repeats = int(sys.argv[2])
settings = {
    "default": {},
    "symmetric": dict(permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.0, options=dict(SymmetricMode=True)),
}
for name, arguments in settings.items():
    best = float("inf")
    for _ in range(repeats):
        start = time.perf_counter()
        scipy.sparse.linalg.splu(matrix, **arguments).solve(right)
        best = min(best, time.perf_counter() - start)
    print(name, best)
