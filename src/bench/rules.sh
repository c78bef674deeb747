#!/bin/sh
# What the rules cost, by JMH: each way of firing them for 1, 10 and 100 zones and with the pack once, twice and
# four times (copies under other ids), then zones a second with two threads, well warmed. Prints a table of averages.
# Usage: src/bench/rules.sh [JMH OPTIONS]; needs Java 17, Maven and some ten minutes.

cd "$(dirname -- "$0")/../.." || exit 1
out=target/bench
mkdir -p $out
[ -n "$SKIP_BUILD" ] || mvn -B -q test-compile || exit 1
[ -r $out/classpath ] || mvn -B -q dependency:build-classpath -Dmdep.outputFile=$out/classpath -Dmdep.includeScope=test || exit 1
processor=$out/jmh-generator-annprocess-1.37.jar
[ -r $processor ] || mvn -B -q dependency:copy -Dartifact=org.openjdk.jmh:jmh-generator-annprocess:1.37 \
  -DoutputDirectory=$out || exit 1
classes=${CLASSES:-target/test-classes:target/classes}:$(cat $out/classpath)
mkdir -p $out/classes
javac -nowarn -d $out/classes -cp "$classes" -processorpath "$processor:$classes" \
  -processor org.openjdk.jmh.generators.BenchmarkProcessor \
  src/test/java/underhold/advice/RulesBenchmark.java || exit 1
jmh="java -cp $out/classes:$classes org.openjdk.jmh.Main"

echo "$(date +%F), $(nproc) processors, load $(cut -d' ' -f1-3 /proc/loadavg)"
$jmh 'RulesBenchmark.rule.*' -rff $out/rules.csv -rf csv "$@" >$out/log 2>&1 || { tail -20 $out/log >&2; exit 1; }
$jmh 'RulesBenchmark.zone.*' -p zones=1 -t 2 -wi 10 -bm thrpt -tu s -rff $out/zones.csv -rf csv "$@" >>$out/log 2>&1 || exit 1
echo "load after $(cut -d' ' -f1-3 /proc/loadavg)"
awk -F, '
  function bare(text) { gsub(/"/, "", text); sub(/.*\./, "", text); return text }
  FNR == 1 { file++; for (i = 1; i <= NF; i++) { gsub(/["\r]/, "", $i); at[file, $i] = i }; next }
  file == 1 {
    name = bare($1); copies = $(at[1, "Param: copies"]); zones = $(at[1, "Param: zones"])
    each = $(at[1, "Score"]) / zones
    if (name == "ruleByHand") hand[zones] = each
    printf "%-16s %3s zones %s  %9.3f us a zone", name, zones, copies == "" ? "        " : "pack x" copies, each
    line[++lines] = name "|" zones "|" copies "|" each; printf "\n"
  }
  file == 2 { printf "%-18s %10.0f zones a second with two threads\n", bare($1), $(at[2, "Score"]) }
  END {
    for (i = 1; i <= lines; i++) {
      split(line[i], c, "|")
      if (c[1] == "ruleSame48" && c[3] == 1) printf "same 48 rules read, %s zones: %.1f times the hand-written ones\n", c[2], c[4] / hand[c[2]]
    }
  }' $out/rules.csv $out/zones.csv
