#!/usr/bin/env bash
# Makes the virtual environment: set-up.sh PYTHON FOLDER. Debian's python3 may lack ensurepip, so there are two ways in.
set -euo pipefail
python=$1 folder=$2
command -v "$python" >/dev/null || { echo "Lumped needs Python 3.11 or newer; '$python' was not found. Install it, or say: make PYTHON=/path/to/python3 …" >&2; exit 1; }
"$python" -c 'import sys; sys.exit(sys.version_info < (3, 11))' || { echo "Lumped needs Python 3.11 or newer; '$python' is $("$python" -V). Say: make PYTHON=/path/to/python3 …" >&2; exit 1; }
echo "Setting up $folder (once; a few minutes) …"
rm -rf "$folder"
if "$python" -c 'import ensurepip' 2>/dev/null; then
  "$python" -m venv "$folder"
elif "$python" -m pip --version >/dev/null 2>&1; then
  "$python" -m venv --without-pip "$folder"
  "$python" -m pip --python "$folder/bin/python" install --quiet pip
else
  echo "This Python has neither ensurepip nor pip. On Debian or Ubuntu: apt-get install python3-venv" >&2
  exit 1
fi
"$folder/bin/python" -m pip install --quiet --require-hashes -r requirements.lock
"$folder/bin/python" -m pip install --quiet --no-deps --no-build-isolation --editable .
"$folder/bin/python" -m compileall -q src
"$folder/bin/python" scripts/compile.py # the solver's loops: half a minute here, or at the first sculpture
