#!/usr/bin/env bash
# Sees to it that what the tests look at pages with is here: a Chromium, and Poppler's pdftoppm for printed sheets.
set -euo pipefail
missing=()
command -v chromium >/dev/null || command -v chromium-browser >/dev/null || missing+=(chromium)
command -v pdftoppm >/dev/null || missing+=(poppler-utils)
[ ${#missing[@]} = 0 ] && exit 0
if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
  echo "Installing Debian's ${missing[*]} for the tests that look at pages (once) …"
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
else
  echo "The tests look at real pages and need: ${missing[*]}. Install them (Debian: sudo apt-get install ${missing[*]}), then say make test again." >&2
  exit 1
fi
