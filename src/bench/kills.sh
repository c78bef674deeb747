#!/bin/bash
# Kills the whole program while it writes and looks at what is left.
# usage: src/bench/kills.sh [COMMANDS [INTERVIEWS [TERMINALS [WRITERS [SEED]]]]]
# how many kills of commands, of interviews by pipe and at a terminal, and of a process that only writes;
# 350, 50, 60 and 200 unless given. Run `mvn package` first. PROGRAM may name another way to start the program.
set -eu
cd "$(dirname "$0")/../.."
program=${PROGRAM:-target/underhold/bin/underhold}
if [ -z "${CLASSPATH:-}" ]; then
  mvn -q -o dependency:build-classpath -DincludeScope=test -Dmdep.outputFile=target/test-classpath.txt
  CLASSPATH=target/test-classes:target/classes:$(cat target/test-classpath.txt)
fi
exec nice java -cp "$CLASSPATH" underhold.hostile.Kills "${1:-350}" "${2:-50}" "${3:-60}" "${4:-200}" "${5:-27111}" $program
