#!/bin/sh
# Compiles the library into the page and drives it in a headless browser, as a person with a phone would; fails where no browser can be had.
# Installs chromium and npm of the distribution where they are missing (needs root and the network then), and fetches the accessibility checker, which only
# this test uses (axe-core, MPL-2.0). Pictures of what it saw are left in examples/page/target/pictures.
set -eu
cd "$(dirname "$0")/../../../../.."
for tool in chromium npm; do
  if ! command -v "$tool" >/dev/null 2>&1; then
    apt-get update
    apt-get install -y "$tool"
  fi
done
axe=examples/page/target/axe
if ! [ -f "$axe/package/axe.min.js" ]; then
  mkdir -p "$axe"
  (cd "$axe" && npm pack --silent axe-core@4.14.1 && tar xzf axe-core-4.14.1.tgz)
fi
exec mvn -B verify -P page -pl examples/page -am -Dtest='Page*Test' -Dsurefire.failIfNoSpecifiedTests=false -Djacoco.skip -Dmaven.javadoc.skip "$@"
