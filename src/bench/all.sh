#!/bin/sh
# All benchmarks, one after the other; they print their ratios. They want a quiet machine and some twenty minutes.
# Usage: src/bench/all.sh [ROUNDS of the commands; 10 unless told]

cd "$(dirname -- "$0")/../.." || exit 1
mvn -B -q package -DskipTests || exit 1
echo "== Commands, whole process" && src/bench/commands.sh "${1:-10}" &&
  echo "== Rules, by JMH" && src/bench/rules.sh &&
  echo "== Many zones" && src/bench/screen.sh
