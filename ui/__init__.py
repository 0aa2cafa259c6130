"""Everything a person sees: the command line, the window, the pictures."""

import os

# The mechanics run in one thread; more threads in the dense algebra only wait for each other, and spin as
# they do. Set before numpy is loaded, which reads these once; what the user has set stays.
for _name in ("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS", "VECLIB_MAXIMUM_THREADS"):
    os.environ.setdefault(_name, "1")
