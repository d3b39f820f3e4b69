#!/usr/bin/env python3
"""Writes scipy-filtfilt.json beside this file: what scipy makes of known signals, for the tests of src/core/signal.

Run with Debian's python3-scipy:  python3 tests/support/scipyReference.py
The numbers come from scipy alone: coefficients from scipy.signal.butter, filtering from scipy.signal.filtfilt with its
usual odd extension of 9 samples (three times the number of coefficients).
"""

import json
import math
import pathlib
import platform

import scipy
from scipy.signal import butter, filtfilt, freqz

DUAL_PASS = (math.sqrt(2) - 1) ** 0.25
PADDING = 9


def swing(i):
    """A slow movement with a shake on it, away from zero at both ends."""
    return 120 + 35 * math.sin(0.21 * i + 0.4) + 4 * math.sin(2.3 * i) - 0.3 * i


SIGNALS = {
    "swing": [swing(i) for i in range(60)],
    "shortest": [swing(3 * i) for i in range(10)],
    "step": [7.0] * 15 + [19.0] * 18,
    "constant": [42.5] * 12,
    "ramp": [3.0 + 1.75 * i for i in range(25)],
}
FILTERS = [(6.0, 30.0), (6.0, 60.0), (4.0, 50.0)]


def dual_pass_cutoff(cutoff_hz, rate_hz):
    """The cut-off of one pass for which forward and back together fall to 0.707 at cutoff_hz."""
    return rate_hz / math.pi * math.atan(math.tan(math.pi * cutoff_hz / rate_hz) / DUAL_PASS)


def case(cutoff_hz, rate_hz):
    single = butter(2, cutoff_hz, fs=rate_hz)
    b, a = butter(2, dual_pass_cutoff(cutoff_hz, rate_hz), fs=rate_hz)
    _, response = freqz(b, a, worN=[cutoff_hz], fs=rate_hz)
    return {
        "cutoffHz": cutoff_hz,
        "rateHz": rate_hz,
        "single": {"b": list(single[0]), "a": list(single[1])},
        "dual": {"b": list(b), "a": list(a)},
        "dualGainAtCutoff": abs(response[0]) ** 2,
        "filtered": {
            name: list(filtfilt(b, a, signal, padtype="odd", padlen=PADDING))
            for name, signal in SIGNALS.items()
        },
    }


document = {
    "made": f"scipy {scipy.__version__}, Python {platform.python_version()}",
    "padding": PADDING,
    "signals": SIGNALS,
    "cases": [case(*which) for which in FILTERS],
}
target = pathlib.Path(__file__).with_name("scipy-filtfilt.json")
target.write_text(json.dumps(document, indent=1) + "\n")
