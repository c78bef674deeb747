#!/bin/bash
# Kills the whole program while it writes and looks at what is left.
# usage: src/bench/kills.sh [COMMANDS [INTERVIEWS [WRITERS [SEED]]]]    how many kills of each; 150, 100, 250 unless given
# Run `mvn package` first. PROGRAM may name another way to start the program.
set -eu
cd "$(dirname "$0")/../.."
program=${PROGRAM:-target/underhold/bin/underhold}
if [ -z "${CLASSPATH:-}" ]; then
  mvn -q -o dependency:build-classpath -DincludeScope=test -Dmdep.outputFile=target/test-classpath.txt
  CLASSPATH=target/test-classes:target/classes:$(cat target/test-classpath.txt)
fi
exec nice java -cp "$CLASSPATH" underhold.hostile.Kills "${1:-150}" "${2:-100}" "${3:-250}" "${4:-27111}" $program
