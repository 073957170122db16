#!/usr/bin/env bash
# Sees to it that the tests find a PostgreSQL, for a notebook that a lab shares. They start and stop their own cluster.
set -euo pipefail
command -v initdb >/dev/null || compgen -G '/usr/lib/postgresql/*/bin/initdb' >/dev/null && exit 0
if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
  echo "Installing Debian's postgresql for the tests of a shared notebook (once) …"
  mkdir -p /etc/postgresql-common/createcluster.d
  echo 'create_main_cluster = false' >/etc/postgresql-common/createcluster.d/lumped-tests.conf # no server of the system's own
  if apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends postgresql >/dev/null; then
    exit 0
  fi
fi
echo "PostgreSQL is not here, so the tests of a notebook on a server are skipped; all others run. To have them: sudo apt-get install postgresql" >&2
