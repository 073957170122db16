"""The real app in a process of its own, and the browser that looks at it."""

import os
import re
import shutil
import signal
import socket
import subprocess
import sys
import time
from contextlib import contextmanager
from tempfile import TemporaryDirectory

FLAGS = [
    "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync", "--enable-unsafe-swiftshader",
]  # fmt: skip


@contextmanager
def served(*options, notebook=None):
    """Serve the app on a free port with a notebook of its own; give its process and address."""
    with TemporaryDirectory(prefix="lumped-") as folder:
        yield from _served(options, str(notebook or folder))


def _served(options, notebook):
    environment = {name: each for name, each in os.environ.items() if not name.startswith(("PYTEST_", "NICEGUI_"))}
    environment |= {"LUMPED_NOTEBOOK": notebook, "LUMPED_WHO": "Ann"}
    process = subprocess.Popen(
        [sys.executable, "-m", "lumped", "serve", "--port", "0", *options],
        stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=environment,
    )  # fmt: skip
    try:
        line = process.stdout.readline()
        address = re.search(r"http://127\.0\.0\.1:\d+", line)
        assert address, line + process.stderr.read()
        _answers(int(address[0].rpartition(":")[2]))
        yield process, address[0]
    finally:
        if process.poll() is None:
            process.send_signal(signal.SIGINT)
            try:
                process.communicate(timeout=15)
            except subprocess.TimeoutExpired:
                process.kill()
                process.communicate()
        process.stdout.close()
        process.stderr.close()


def chromium():
    """Give the browser's place, or say what to install."""
    place = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")
    assert place, "These tests need the browser Chromium: on Debian, apt-get install chromium"
    return place


def _answers(port, within=60.0):
    """Wait until the server takes calls: it tells its address a little before."""
    end = time.monotonic() + within
    while True:
        try:
            socket.create_connection(("127.0.0.1", port), timeout=5).close()
        except OSError:
            assert time.monotonic() < end, f"nobody answers at port {port}"
            time.sleep(0.05)
        else:
            return
