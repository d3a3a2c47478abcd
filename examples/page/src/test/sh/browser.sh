#!/bin/sh
# What the tests of the page need beside Java: a browser without a screen, and the accessibility checker, which only these tests use
# (axe-core, MPL-2.0). Installs the packages chromium and npm where they are missing, which takes root and the network; fails and says so
# where one cannot be had.
set -eu
cd "$(dirname "$0")/../../.."

fail() {
  echo "page: $1" >&2
  exit 1
}

need() {
  command -v "$1" >/dev/null 2>&1 && return
  echo "page: $1 is missing and is being installed"
  root=''
  [ "$(id -u)" = 0 ] || root='sudo -n'
  if command -v apt-get >/dev/null 2>&1; then
    $root apt-get update -q || true
    DEBIAN_FRONTEND=noninteractive $root apt-get install -y -q "$1" || true
  fi
  command -v "$1" >/dev/null 2>&1 ||
    fail "$1 cannot be had, so the page is NOT checked; install the package $1 and run this again"
}

need chromium
chromium --version --no-sandbox >/dev/null 2>&1 || fail 'chromium is there but does not start, so the page is NOT checked'

axe=target/axe
if ! [ -f "$axe/package/axe.min.js" ]; then
  need npm
  mkdir -p "$axe"
  (cd "$axe" && npm pack --silent axe-core@4.14.1 && tar xzf axe-core-4.14.1.tgz) ||
    fail 'axe-core cannot be fetched from the registry of npm, so the page is NOT checked; see the network'
fi
