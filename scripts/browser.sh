#!/usr/bin/env bash
# Sees to it that a Chromium is here for the tests that look at real pages.
set -euo pipefail
for name in chromium chromium-browser; do
  command -v "$name" >/dev/null && exit 0
done
if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
  echo "Installing Debian's chromium for the browser tests (once) …"
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium >/dev/null
else
  echo "The tests look at real pages and need a Chromium. Install it (Debian: sudo apt-get install chromium), then say make test again." >&2
  exit 1
fi
