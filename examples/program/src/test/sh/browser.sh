#!/bin/sh
# Looks at the report of a visit in a real browser without a screen: no script error, no request to anything outside, readable on a phone, printable.
# Installs the chromium of the distribution when it is missing (needs root and the network then). Pictures of what it saw are left in examples/program/target/browser.
set -eu
cd "$(dirname "$0")/../../../../.."
if ! command -v chromium >/dev/null 2>&1; then
  apt-get update
  apt-get install -y chromium
fi
exec mvn -B -pl examples/program -am verify -P browser -Dtest=VisitHtmlTest -Dsurefire.failIfNoSpecifiedTests=false -Djacoco.skip -Dmaven.javadoc.skip "$@"
