#!/bin/bash
# Sends hostile files through every reader and runs hostile command lines, and says what was found.
# usage: src/bench/hostile.sh [FILES [LINES [SEED]]]    1,000,000 files, 30,000 lines and seed 1 unless given
# Run `mvn test-compile` first. One process, of which one thread works; files that show a failure are kept in target/hostile.
set -eu
cd "$(dirname "$0")/../.."
if [ -z "${CLASSPATH:-}" ]; then
  mvn -q -o dependency:build-classpath -DincludeScope=test -Dmdep.outputFile=target/test-classpath.txt
  CLASSPATH=target/test-classes:target/classes:$(cat target/test-classpath.txt)
fi
exec nice -n 10 java -Xmx1g -XX:+UseSerialGC -cp "$CLASSPATH" underhold.hostile.LongRun "${1:-1000000}" "${2:-30000}" "${3:-1}"
